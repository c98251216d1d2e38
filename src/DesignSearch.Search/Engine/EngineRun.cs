using DesignSearch.Search.Archive;
using DesignSearch.Search.Model;
using DesignSearch.Search.Proof;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Engine;

/// <summary>One search from its first block to its result.</summary>
internal sealed class EngineRun
{
    private const int PopulationSize = 24;
    private const int SinglePopulation = 96;

    private readonly IProblem problem;
    private readonly SearchSpace space;
    private readonly SearchSettings settings;
    private readonly BlockEvaluator evaluator;
    private readonly IProgress<SearchProgress>? progress;
    private readonly CancellationToken cancel;
    private readonly FrontArchive archive;
    private readonly Population population;
    private readonly BestByMerit best;
    private readonly PointSet met = new();
    private readonly VolumeTrend trend;
    private readonly Ranking ranking;
    private readonly PointChooser chooser;
    private readonly Passage passage;
    private EvaluatedPoint? nearestMiss;
    private SearchProof? proof;
    private long evaluations;

    public EngineRun(IProblem problem, SearchSpace space, SearchSettings settings, BlockEvaluator evaluator,
        IProgress<SearchProgress>? progress, CancellationToken cancel)
    {
        (this.problem, this.space, this.settings) = (problem, space, settings);
        (this.evaluator, this.progress, this.cancel) = (evaluator, progress, cancel);
        archive = FrontArchive.For(problem.Objectives.Count);
        population = new(space, problem.Objectives.Count == 1 ? SinglePopulation : PopulationSize, problem.Objectives.Count);
        best = new(settings.BestByMerit);
        trend = new(problem.Objectives.Count);
        ranking = new(space, archive, problem.Objectives.Count);
        chooser = new(problem, space, settings, (archive, population), ranking, met, () => cancel.IsCancellationRequested || settings.TimeIsUp?.Invoke() == true);
        passage = chooser.Passage;
    }

    public SearchResult ToTheEnd(bool throughAll)
    {
        var reason = throughAll ? Enumerate() : Search();
        var isOpen = reason is not (StopReason.Enumerated or StopReason.Exhausted or StopReason.Cancelled);
        if (isOpen && settings.ProofSimulations > 0 && space.IsFinite && problem is IBoundedProblem bounded)
            proof = new Prover(bounded, space, archive, Settle, settings.ProofSimulations, settings.ProofBoxes, () => cancel.IsCancellationRequested).Run();
        return Result(reason);
    }

    // Evaluates a point that was never met and that the screen lets pass; says whether it did.
    private bool Settle(double[] point)
    {
        if (!met.Add(SearchSpace.KeyOf(point)) || passage.Refuses(point))
            return false;
        Take(new([point], []));
        return true;
    }

    private StopReason Enumerate()
    {
        var block = new List<double[]>(settings.BlockSize);
        foreach (var point in space.Points())
        {
            if (!met.Add(SearchSpace.KeyOf(point)) || passage.Refuses(point))
                continue;
            block.Add(point);
            if (block.Count < settings.BlockSize)
                continue;
            if (Ended() is { } reason && reason is StopReason.Time or StopReason.Cancelled)
                return reason;
            Take(new([.. block], []));
            block.Clear();
        }

        if (block.Count > 0)
            Take(new([.. block], []));
        return StopReason.Enumerated;
    }

    // While a block is evaluated, the next one is proposed: its points know what the block before that one taught. A block of one point waits for none.
    private StopReason Search()
    {
        (ProposedBlock Block, PendingBlock Work)? running = null;
        while (true)
        {
            var reason = Ended();
            var ahead = running?.Block.Points.Length ?? 0;
            var block = reason is null && evaluations + ahead < settings.MaxEvaluations ? Propose(evaluations + ahead) : null;
            if (running is null && block is null)
                return reason ?? (chooser.IsThrough ? StopReason.Exhausted : Ended() ?? StopReason.Unfound);
            (ProposedBlock Block, PendingBlock Work)? next = block is null ? null : (block, evaluator.Begin(block.Points));
            if (running is { } first)
                Take(first.Block, evaluator.Finish(first.Work));
            running = next;
            if (settings.BlockSize == 1 && next is { } alone)
            {
                Take(alone.Block, evaluator.Finish(alone.Work));
                running = null;
            }
            else if (next is not null && Ended() is { } ended && ended is not StopReason.Budget)
                return ended;
        }
    }

    // A block of points worth evaluating; null where none turns up.
    private ProposedBlock? Propose(long from)
    {
        var (points, origins) = (new List<double[]>(settings.BlockSize), new List<Origin>(settings.BlockSize));
        var room = (int)Math.Min(settings.BlockSize, settings.MaxEvaluations - from);
        while (points.Count < room && chooser.Next(from + points.Count) is var (point, origin))
        {
            points.Add(point);
            origins.Add(origin);
        }

        return points.Count == 0 ? null : new([.. points], origins);
    }

    private StopReason? Ended() =>
        cancel.IsCancellationRequested ? StopReason.Cancelled
        : settings.TimeIsUp?.Invoke() == true ? StopReason.Time
        : evaluations >= settings.MaxEvaluations ? StopReason.Budget
        : settings.TargetHypervolume is { } target && trend.Now >= target ? StopReason.Target
        : settings.Stagnation is { } least && trend.GrewLessThan(least, settings.StagnationEvaluations) ? StopReason.Stagnation
        : null;

    private void Take(ProposedBlock block) => Take(block, evaluator.Evaluate(block.Points));

    private void Take(ProposedBlock block, Evaluation[] results)
    {
        var (points, origins) = block;
        for (var i = 0; i < points.Length; i++)
        {
            var point = new EvaluatedPoint(points[i], results[i], evaluations++);
            Origin? origin = i < origins.Count ? origins[i] : null;
            chooser.Take(point, origin);
            var aside = origin is { Choice: Choice.Fresh };
            var kept = Learn(point, aside);
            if (origin is { } one && !aside && problem.Objectives.Count == 1 && population.Count == SinglePopulation)
                chooser.Kept(one, kept);
        }

        trend.Mark(evaluations);
        progress?.Report(new(evaluations, Math.Min(1, (double)evaluations / settings.MaxEvaluations), trend.Best, trend.Now, archive.Count));
    }

    private bool Learn(EvaluatedPoint point, bool aside)
    {
        passage.Refuses(point.Point);
        ranking.Learn(point, passage.Bounds);
        // What a fresh start finds is a parent here only where it betters the front.
        var kept = (!aside || (point.Evaluation.TotalViolation == 0 && !archive.Covers(point.Evaluation.Objectives))) && population.Add(point);
        var missed = point.Evaluation.TotalViolation;
        if (missed == 0)
        {
            best.Add(point);
            var entered = archive.Add(point);
            if (entered)
                ranking.FrontMoved();
            trend.Take(point.Evaluation.Objectives, entered, archive);
        }
        else if (nearestMiss is null || missed < nearestMiss.Evaluation.TotalViolation)
            nearestMiss = point;
        return kept;
    }

    private SearchResult Result(StopReason reason) => new()
    {
        Front = [.. Enumerable.Range(0, archive.Count).Select(i => archive[i]).OrderBy(p => p.Evaluation.Objectives[0]).ThenBy(p => p.Index)],
        BestByMerit = best.Members,
        NearestMiss = archive.Count == 0 ? nearestMiss : null,
        Evaluations = evaluations,
        DistinctPoints = met.Count,
        StoppedBecause = reason,
        StoppedInWords = StopWords.Of(reason, settings, evaluations, met.Count) + (proof is null ? "" : " " + StopWords.Of(proof)),
        IsExact = reason is StopReason.Enumerated or StopReason.Exhausted || proof is { IsComplete: true },
        Proof = proof,
        HypervolumeTrend = trend.Points,
    };
}
