using DesignSearch.Search.Archive;
using DesignSearch.Search.Model;
using DesignSearch.Search.Moves;
using DesignSearch.Search.Proof;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Engine;

/// <summary>One search from its first block to its result.</summary>
internal sealed class EngineRun
{
    private const int PopulationSize = 24;
    private const int SinglePopulation = 96;
    private const int Attempts = 400;
    private const int LeastAttempts = 20;

    private const int Climbs = 4;
    private const int EveryClimb = 4;
    private const int FreshAttempts = 50;

    // How a point was chosen: as it came, as the best by the model of some, by a climb in the model, by the fresh start, or anywhere.
    private const int Plain = 0;
    private const int Ranked = 1;
    private const int Climbed = 2;
    private const int OfFresh = 3;
    private const int Drawn = 4;

    // One point in twenty is drawn anywhere where pairs of levels are learnt: what is never seen is never learnt.
    private const int EveryDrawn = 20;
    private const long FreshFrom = 500;
    private const int ModelSteps = 10;

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
    private readonly Proposer proposer;
    private readonly VolumeTrend trend;
    private readonly Ranking ranking;
    private readonly Passage passage;
    private readonly LastResort resort;
    private readonly double[] bounds;
    private readonly Credit arms;
    private readonly bool drawsAnywhere;
    private readonly FreshStart? fresh;
    private EvaluatedPoint? nearestMiss;
    private SearchProof? proof;
    private int attempts = Attempts;
    private long evaluations;
    private int ranked;
    private int way;

    public EngineRun(IProblem problem, SearchSpace space, SearchSettings settings, BlockEvaluator evaluator,
        IProgress<SearchProgress>? progress, CancellationToken cancel)
    {
        (this.problem, this.space, this.settings) = (problem, space, settings);
        (this.evaluator, this.progress, this.cancel) = (evaluator, progress, cancel);
        archive = FrontArchive.For(problem.Objectives.Count);
        population = new(space, problem.Objectives.Count == 1 ? SinglePopulation : PopulationSize, problem.Objectives.Count);
        best = new(settings.BestByMerit);
        proposer = new(space, archive, population);
        trend = new(problem.Objectives.Count);
        ranking = new(space, archive, problem.Objectives.Count);
        arms = new(ranking.Climber.IsOfUse ? 3 : 2, 0.1);
        passage = new(problem, space, proposer, met);
        bounds = passage.Bounds;
        resort = new(problem, space, archive, proposer, passage, met);
        var reals = space.Variables.Count(v => v.Kind == VariableKind.Real);
        drawsAnywhere = reals == 0 && ranking.Climber.IsOfUse;
        fresh = reals > 0 && reals < space.Count && bounds.Length > 1 ? new(space, problem.Objectives.Count, PopulationSize) : null;
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
                return reason ?? (resort.IsThrough ? StopReason.Exhausted : Ended() ?? StopReason.Unfound);
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
        var (points, origins) = (new List<double[]>(settings.BlockSize), new List<(int, int)>(settings.BlockSize));
        var room = (int)Math.Min(settings.BlockSize, settings.MaxEvaluations - from);
        while (points.Count < room && Next(from + points.Count) is { } point)
        {
            points.Add(point);
            origins.Add((ranked, way));
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

    // The next point worth evaluating: new, not refused, and not already known to be beaten. Null where none turns up.
    private double[]? Next(long index)
    {
        var random = new SplitMixStream(settings.Seed, (ulong)index, 0);
        if (drawsAnywhere && ranking.Ready && random.Below(EveryDrawn) == 0 && passage.Through(proposer.Anywhere(ref random), default, ref random) is { } unlike)
        {
            (ranked, way) = (Drawn, -1);
            return unlike;
        }

        if (fresh is not null && index >= FreshFrom && random.Below(2) == 0 && Fresh(ref random) is { } begun)
            return begun;

        ranked = ranking.Ready ? arms.Choose(ref random) : Plain;
        // A climb looks at some hundred points, so not every one that pays is taken.
        if (ranked == Climbed && random.Below(EveryClimb) > 0)
            ranked = Ranked;
        if (ranked != Plain && MostPromising(index, ref random) is { } promising)
            return promising;
        ranked = Plain;
        for (var attempt = 0; attempt < attempts; attempt++)
        {
            var isMade = attempt < attempts * 3 / 4;
            var drawn = isMade ? proposer.Propose(index, ref random, settings.Seed) : proposer.Anywhere(ref random);
            if (passage.Through(drawn, isMade ? proposer.Descent : default, ref random) is not { } point || archive.Covers(bounds))
                continue;
            (way, attempts) = (proposer.Way, Attempts);
            return point;
        }

        // What failed now will mostly fail again soon.
        attempts = Math.Max(LeastAttempts, attempts / 2);
        way = -1;
        return resort.Next(settings.RoundsInVain, () => cancel.IsCancellationRequested || settings.TimeIsUp?.Invoke() == true, ref random);
    }

    // A point of the fresh start beside this search.
    private double[]? Fresh(ref SplitMixStream random)
    {
        for (var attempt = 0; attempt < FreshAttempts; attempt++)
        {
            if (passage.Through(fresh!.Propose(ref random), default, ref random) is not { } point)
                continue;
            fresh.Made();
            (ranked, way) = (OfFresh, fresh.Way);
            return point;
        }

        return null;
    }

    private double[]? MostPromising(long index, ref SplitMixStream random)
    {
        double[]? chosen = null;
        var most = double.NegativeInfinity;
        // Few or many, from 2 to 32: many trust the model, few leave room where it is wrong.
        var pool = ranked == Climbed ? Climbs : 2 << random.Below(5);
        for (var candidate = 0; candidate < pool; candidate++)
        {
            // Every second climb starts anywhere: what lies in another basin is not found from what is near.
            var isMade = ranked != Climbed || candidate % 2 == 0;
            var point = isMade ? proposer.Propose(index, ref random, settings.Seed) : proposer.Anywhere(ref random);
            var (descent, made) = isMade ? (proposer.Descent, proposer.Way) : (default, -1);
            if (ranked == Climbed)
            {
                if (passage.Refuses(point) || ranking.Climber.From(point, met, p => !passage.Refuses(p), descent, ref random) is not { } climbed)
                    continue;
                point = climbed;
            }

            if (met.Contains(SearchSpace.KeyOf(point)))
            {
                proposer.Disturb(point, ref random);
                if (met.Contains(SearchSpace.KeyOf(point)))
                    continue;
            }

            if (passage.Refuses(point))
            {
                met.Add(SearchSpace.KeyOf(point));
                continue;
            }

            if (archive.Covers(bounds))
                continue;
            var promise = ranking.Promise(point, bounds, descent);
            if (promise > most)
                (chosen, most, way) = (point, promise, made);
        }

        if (chosen is null)
            return null;
        met.Add(SearchSpace.KeyOf(chosen));
        return chosen;
    }

    private void Take(ProposedBlock block) => Take(block, evaluator.Evaluate(block.Points));

    private void Take(ProposedBlock block, Evaluation[] results)
    {
        var (points, origins) = block;
        for (var i = 0; i < points.Length; i++)
        {
            resort.Take(points[i]);
            var point = new EvaluatedPoint(points[i], results[i], evaluations++);
            var aside = i < origins.Count && origins[i].Ranked == OfFresh;
            if (aside)
                fresh!.Take(point, origins[i].Way);
            else if (i < origins.Count && origins[i].Ranked != Drawn)
                Book(origins[i].Ranked, origins[i].Way, results[i]);
            var kept = Learn(point, aside);
            // With one objective there is no area to gain: what finds a place among the parents counts.
            if (i < origins.Count && !aside && bounds.Length == 1 && population.Count == SinglePopulation)
                proposer.Book(origins[i].Way, kept ? 1 : 0);
        }

        trend.Mark(evaluations);
        progress?.Report(new(evaluations, Math.Min(1, (double)evaluations / settings.MaxEvaluations), trend.Best, trend.Now, archive.Count));
    }

    // What a way gained: the share of the front's box that is new. While there is no box, and so with one objective, ways stay even.
    private void Book(int wasRanked, int made, Evaluation result)
    {
        if (!ranking.Ready)
            return;
        var gain = result.TotalViolation > 0 ? 0 : Math.Max(0, ranking.Gain(result.Objectives));
        arms.Book(wasRanked, gain);
        proposer.Book(made, gain);
    }

    private bool Learn(EvaluatedPoint point, bool aside)
    {
        passage.Refuses(point.Point);
        ranking.Learn(point, bounds, ModelSteps);
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
