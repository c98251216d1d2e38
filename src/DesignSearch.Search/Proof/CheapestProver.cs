namespace DesignSearch.Search.Proof;

/// <summary>
/// Branch and bound for the cheapest point that serves: the set with the lowest bound is looked at first, and what cannot be cheaper than the
/// best known is dropped. It is bounded by simulations and by sets looked at, never by a clock, and comes to the same on any number of threads.
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
    private double[]? best;
    private double cost;
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
    public CheapestProof Run(double[]? known, double knownCost, IProgress<CheapestProof>? progress = null, CancellationToken cancel = default)
    {
        (best, cost) = (known, knownCost);
        Offer(problem.All, 0, 0, true);
        while (simulations < mostSimulations && boxes < mostBoxes && !cancel.IsCancellationRequested && Fill())
        {
            Work();
            progress?.Report(Told(false));
        }

        return Told(cancel.IsCancellationRequested);
    }

    private CheapestProof Told(bool isStopped)
    {
        var least = open.TryPeek(out var lowest, out _) ? Math.Min(lowest.Bound, cost) : cost;
        return new(least >= cost, least, best, cost, simulations, boxes, isStopped);
    }

    // Splits from the lowest bound on until there is a block to simulate; false where nothing is left.
    private bool Fill()
    {
        block.Clear();
        while (block.Count < Block && boxes < mostBoxes && open.TryDequeue(out var next, out _))
        {
            if (next.Bound >= cost)
            {
                open.Clear();
                break;
            }

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
        var costs = new double[points.Length];
        problem.Evaluate(points, costs, threads);
        for (var i = 0; i < points.Length; i++)
        {
            if (costs[i] < cost)
                (best, cost) = (points[i].Lowest(), costs[i]);
        }

        Open[] wide = [.. block.Where(b => !b.Set.IsPoint && b.Bound < cost)];
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
        if (bound < cost)
            open.Enqueue(one with { Bound = bound }, (bound, made++));
    }
}
