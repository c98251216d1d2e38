namespace DesignSearch.Search.Proof;

/// <summary>
/// Branch and bound for the cheapest point that serves: the set with the lowest bound is looked at first, and what cannot be cheaper than the
/// best known is dropped. Questions about some of the points are answered on the way: a set stays as long as one of them may gain by it.
/// It is bounded by simulations and by sets looked at, never by a clock, and comes to the same on any number of threads.
/// </summary>
/// <param name="problem">The problem.</param>
/// <param name="mostSimulations">Simulations to spend at most, 0 or more.</param>
/// <param name="mostBoxes">Sets to look at at most, 1 or more.</param>
/// <param name="threads">Threads to work on.</param>
public sealed class CheapestProver(ICheapestProblem problem, long mostSimulations, long mostBoxes, int threads)
{
    // Sets that are simulated at a time, whatever the threads.
    private const int Block = 128;

    private readonly PriorityQueue<Open, (double, long)> open = new();
    private readonly List<Open> block = new(Block);
    private ProofAim[] aims = [];
    private double[]?[] best = [];
    private double[] costs = [];
    private long simulations;
    private long boxes;
    private long made;

    // Added is what simulation said of the set or of one that held it.
    private sealed record Open(LevelSets Set, double Bound, double Added, bool WantsSimulation);

    /// <summary>Proves, or comes as far as it may.</summary>
    /// <param name="known">The cheapest point known that serves; null without one.</param>
    /// <param name="knownCost">What it costs; infinite without one.</param>
    /// <param name="progress">Told how far it is after every block; null for silence.</param>
    /// <param name="cancel">Ends it early; what was proved so far stands.</param>
    public CheapestProof Run(double[]? known, double knownCost, IProgress<CheapestProof>? progress = null, CancellationToken cancel = default) =>
        Run(problem.All, known, knownCost, [], progress, cancel);

    /// <summary>The same for a part of the points, with further questions.</summary>
    /// <param name="part">The part.</param>
    /// <param name="known">The cheapest point known that serves; null without one.</param>
    /// <param name="knownCost">What it costs; infinite without one.</param>
    /// <param name="asked">Further questions.</param>
    /// <param name="progress">Told how far it is after every block; null for silence.</param>
    /// <param name="cancel">Ends it early; what was proved so far stands.</param>
    public CheapestProof Run(
        LevelSets part, double[]? known, double knownCost, IReadOnlyList<ProofAim> asked, IProgress<CheapestProof>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(part);
        aims = [ProofAim.Everything(part.Lowest().Length, knownCost), .. asked];
        best = new double[]?[aims.Length];
        best[0] = known;
        costs = [.. aims.Select(a => a.Known)];
        Offer(part, 0, 0, true);
        while (simulations < mostSimulations && boxes < mostBoxes && !cancel.IsCancellationRequested && Fill())
        {
            Work();
            progress?.Report(Told(false));
        }

        var told = Told(cancel.IsCancellationRequested);
        return told with { Aims = [.. Enumerable.Range(1, asked.Count).Select(i => new AimProof(Least(i), best[i], costs[i]))] };
    }

    private CheapestProof Told(bool isStopped)
    {
        var least = open.TryPeek(out var lowest, out _) ? Math.Min(lowest.Bound, costs[0]) : costs[0];
        return new(least >= costs[0], least, best[0], costs[0], simulations, boxes, isStopped);
    }

    private double Least(int aim) =>
        open.UnorderedItems.Where(o => o.Element.Bound < costs[aim] && aims[aim].Meets(o.Element.Set)).Select(o => o.Element.Bound).Append(costs[aim]).Min();

    // Whether one of the questions may gain by a set.
    private bool IsOfUse(LevelSets set, double bound)
    {
        for (var i = 0; i < aims.Length; i++)
        {
            if (bound < costs[i] && aims[i].Meets(set))
                return true;
        }

        return false;
    }

    // Splits from the lowest bound on until there is a block to simulate; false where nothing is left.
    private bool Fill()
    {
        block.Clear();
        while (block.Count < Block && boxes < mostBoxes && open.TryDequeue(out var next, out _))
        {
            if (!IsOfUse(next.Set, next.Bound))
                continue;
            if (next.Set.IsPoint || (next.WantsSimulation && problem.CanSimulate(next.Set)))
            {
                block.Add(next);
                continue;
            }

            var split = problem.Split(next.Set);
            foreach (var part in split.Parts)
                Offer(part, next.Bound, next.Added, next.WantsSimulation || split.ShowsInSimulation);
        }

        return block.Count > 0;
    }

    private void Work()
    {
        LevelSets[] points = [.. block.Where(b => b.Set.IsPoint).Select(b => b.Set)];
        var found = new double[points.Length];
        problem.Evaluate(points, found, threads);
        for (var i = 0; i < points.Length; i++)
        {
            for (var aim = 0; aim < aims.Length; aim++)
            {
                if (found[i] < costs[aim] && aims[aim].Meets(points[i]))
                    (best[aim], costs[aim]) = (points[i].Lowest(), found[i]);
            }
        }

        Open[] wide = [.. block.Where(b => !b.Set.IsPoint && IsOfUse(b.Set, b.Bound))];
        LevelSets[] sets = [.. wide.Select(b => b.Set)];
        var added = new double[sets.Length];
        problem.Simulate(sets, added, threads);
        for (var i = 0; i < wide.Length; i++)
            Push(wide[i] with { Added = Math.Max(added[i], wide[i].Added), WantsSimulation = false }, wide[i].Bound, problem.Cheaply(sets[i]));
        simulations += points.Length + sets.Length;
    }

    private void Offer(LevelSets set, double parent, double added, bool wantsSimulation)
    {
        boxes++;
        Push(new(set, parent, added, wantsSimulation), parent, problem.Cheaply(set));
    }

    private void Push(Open one, double parent, double cheaply)
    {
        var bound = Math.Max(parent, cheaply + one.Added);
        if (IsOfUse(one.Set, bound))
            open.Enqueue(one with { Bound = bound }, (bound, made++));
    }
}
