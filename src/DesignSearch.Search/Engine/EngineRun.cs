using System.Globalization;
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

    // Where proposals fail: draws and steps through the rest in turn, and how often before the search ends without a proof. Without bounds only a
    // space that can be gone through is worth a walk; a box is dear to bound.
    private const int Draws = 1000;
    private const int MostWalked = 4_000_000;
    private const int Steps = MostWalked / UsualRounds;
    private const int UsualRounds = 10;
    private const int Boxes = 1000;
    private const int Climbs = 2;
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
    private const int Lately = 1024;
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
    private readonly double[] bounds;
    private readonly ScreenMemo screen;
    private EvaluatedPoint? nearestMiss;
    private SearchProof? proof;
    private readonly Remainder? rest;
    private readonly List<double[]> lately = [];
    private int attempts = Attempts;
    private long evaluations;
    private readonly Credit arms;
    private readonly List<(int Ranked, int Way)> origins = [];
    private int ranked;
    private int way;
    private readonly bool drawsAnywhere;
    private readonly FreshStart? fresh;

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
        bounds = new double[problem.Objectives.Count];
        screen = new(problem);
        var reals = space.Variables.Count(v => v.Kind == VariableKind.Real);
        drawsAnywhere = reals == 0 && ranking.Climber.IsOfUse;
        fresh = reals > 0 && reals < space.Count && bounds.Length > 1 ? new(space, problem.Objectives.Count, PopulationSize) : null;
        rest = space.IsFinite && (problem is IBoundedProblem || space.Size <= MostWalked) ? new(problem, space, archive) : null;
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
        if (!met.Add(SearchSpace.KeyOf(point)) || Refused(point))
            return false;
        origins.Clear();
        Take([point]);
        return true;
    }

    private StopReason Enumerate()
    {
        var block = new List<double[]>(settings.BlockSize);
        foreach (var point in space.Points())
        {
            if (!met.Add(SearchSpace.KeyOf(point)) || Refused(point))
                continue;
            block.Add(point);
            if (block.Count < settings.BlockSize)
                continue;
            if (Ended() is { } reason && reason is StopReason.Time or StopReason.Cancelled)
                return reason;
            Take(block);
            block.Clear();
        }

        if (block.Count > 0)
            Take(block);
        return StopReason.Enumerated;
    }

    private StopReason Search()
    {
        var block = new List<double[]>(settings.BlockSize);
        while (true)
        {
            if (Ended() is { } reason)
                return reason;
            block.Clear();
            origins.Clear();
            var room = (int)Math.Min(settings.BlockSize, settings.MaxEvaluations - evaluations);
            while (block.Count < room && Next(evaluations + block.Count) is { } point)
            {
                block.Add(point);
                origins.Add((ranked, way));
            }

            if (block.Count == 0)
                return rest is { IsThrough: true } ? StopReason.Exhausted : Ended() ?? StopReason.Unfound;
            Take(block);
        }
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
        if (drawsAnywhere && ranking.Ready && random.Below(EveryDrawn) == 0 && Passing(proposer.Anywhere(ref random), ref random) is { } unlike)
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
            var drawn = attempt < attempts * 3 / 4 ? proposer.Propose(index, ref random, settings.Seed) : proposer.Anywhere(ref random);
            if (Passing(drawn, ref random) is not { } point || archive.Covers(bounds))
                continue;
            (way, attempts) = (proposer.Way, Attempts);
            return point;
        }

        // What failed now will mostly fail again soon.
        attempts = Math.Max(LeastAttempts, attempts / 2);
        way = -1;
        return Left(ref random);
    }

    // Where proposals fail. A violation may lead astray, so nothing is repaired here: changes of what passed, draws from anywhere, and a walk through
    // all there is, in turn. Null once the walk is at its end, or after many rounds in vain.
    private double[]? Left(ref SplitMixStream random)
    {
        for (var round = 0; round < settings.RoundsInVain && rest is not { IsThrough: true }; round++)
        {
            if (cancel.IsCancellationRequested || settings.TimeIsUp?.Invoke() == true)
                return null;
            for (var draw = 0; draw < Draws; draw++)
            {
                var point = proposer.Anywhere(ref random);
                if (lately.Count > 0 && draw % 2 == 0)
                {
                    point = (double[])lately[random.Below(lately.Count)].Clone();
                    proposer.Disturb(point, ref random);
                }

                if (IsLeft(point))
                    return point;
            }

            var steps = problem is IBoundedProblem ? Boxes : Steps;
            for (var step = 0; step < steps && rest?.Next(steps - step) is { } next; step++)
            {
                if (IsLeft(next))
                    return next;
            }
        }

        return null;
    }

    // Whether a point was never met, passes and may better the front; it counts as met then.
    private bool IsLeft(double[] point) =>
        !met.Contains(SearchSpace.KeyOf(point)) && screen.Missed(point, bounds, double.Epsilon) == 0 && !archive.Covers(bounds) && met.Add(SearchSpace.KeyOf(point));

    // A point of the fresh start beside this search.
    private double[]? Fresh(ref SplitMixStream random)
    {
        for (var attempt = 0; attempt < FreshAttempts; attempt++)
        {
            if (Passing(fresh!.Propose(ref random), ref random) is not { } point)
                continue;
            fresh.Made();
            (ranked, way) = (OfFresh, fresh.Way);
            return point;
        }

        return null;
    }

    // The point, changed where it was met and repaired where it must; null where that did not help. It counts as met then.
    private double[]? Passing(double[] point, ref SplitMixStream random)
    {
        for (var change = 0; change < 8 && met.Contains(SearchSpace.KeyOf(point)); change++)
            proposer.Disturb(point, ref random);
        return met.Add(SearchSpace.KeyOf(point)) && (!Refused(point) || Repaired(point, ref random)) ? point : null;
    }

    private double[]? MostPromising(long index, ref SplitMixStream random)
    {
        double[]? chosen = null;
        var most = double.NegativeInfinity;
        // Few or many, from 2 to 32: many trust the model, few leave room where it is wrong.
        var pool = ranked == Climbed ? Climbs : 2 << random.Below(5);
        for (var candidate = 0; candidate < pool; candidate++)
        {
            var point = proposer.Propose(index, ref random, settings.Seed);
            if (ranked == Climbed)
            {
                if (Refused(point) || ranking.Climber.From(point, met, p => !Refused(p), proposer.Descent, ref random) is not { } climbed)
                    continue;
                point = climbed;
            }

            if (met.Contains(SearchSpace.KeyOf(point)))
            {
                proposer.Disturb(point, ref random);
                if (met.Contains(SearchSpace.KeyOf(point)))
                    continue;
            }

            if (Refused(point))
            {
                met.Add(SearchSpace.KeyOf(point));
                continue;
            }

            if (archive.Covers(bounds))
                continue;
            var promise = ranking.Promise(point, bounds, proposer.Descent);
            if (promise > most)
                (chosen, most, way) = (point, promise, proposer.Way);
        }

        if (chosen is null)
            return null;
        met.Add(SearchSpace.KeyOf(chosen));
        return chosen;
    }

    private bool Refused(double[] point) => Missed(point) > 0;

    private double Missed(double[] point) => screen.Missed(point, bounds);

    // A few changes that each miss the limits by less; in place. True once the point passes and is new.
    private bool Repaired(double[] point, ref SplitMixStream random)
    {
        var missed = Missed(point);
        for (var change = 0; change < 4 * space.Count; change++)
        {
            var other = (double[])point.Clone();
            proposer.Disturb(other, ref random);
            var after = screen.Missed(other, bounds, missed);
            if (after >= missed)
                continue;
            other.CopyTo(point, 0);
            missed = after;
            if (missed == 0)
                return met.Add(SearchSpace.KeyOf(point));
        }

        return false;
    }

    private void Take(List<double[]> block)
    {
        double[][] points = [.. block];
        var results = evaluator.Evaluate(points);
        for (var i = 0; i < points.Length; i++)
        {
            if (lately.Count < Lately)
                lately.Add(points[i]);
            else
                lately[(int)(evaluations % Lately)] = points[i];
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
        Missed(point.Point);
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
        StoppedInWords = proof is null ? Words(reason) : Words(reason) + " " + Words(proof),
        IsExact = reason is StopReason.Enumerated or StopReason.Exhausted || proof is { IsComplete: true },
        Proof = proof,
        HypervolumeTrend = trend.Points,
    };

    private string Words(StopReason reason) => reason switch
    {
        StopReason.Budget when settings.MaxEvaluations == 1 => "The one evaluation of the budget was spent.",
        StopReason.Budget => FormattableString.Invariant($"All {settings.MaxEvaluations} evaluations of the budget were spent."),
        StopReason.Time => FormattableString.Invariant($"The time was up after {Evaluations(evaluations)}."),
        StopReason.Cancelled => FormattableString.Invariant($"It was stopped after {Evaluations(evaluations)}."),
        StopReason.Stagnation => FormattableString.Invariant($"The front hardly moved over the last {settings.StagnationEvaluations} of {Evaluations(evaluations)}."),
        StopReason.Target => FormattableString.Invariant($"The target was reached after {Evaluations(evaluations)}."),
        StopReason.Enumerated when met.Count == 1 => "The only choice was looked at, so the answer is exact.",
        StopReason.Enumerated => string.Create(
            CultureInfo.InvariantCulture,
            $"All {met.Count} choices were looked at and the {evaluations} that pass the first checks were evaluated, so the answer "
                + $"is exact."),
        StopReason.Exhausted => string.Create(
            CultureInfo.InvariantCulture,
            $"After {Evaluations(evaluations)} everything else was gone through: nothing that passes the first checks is left that could "
                + $"better the front, so the answer is exact."),
        _ => string.Create(
            CultureInfo.InvariantCulture,
            $"After {Evaluations(evaluations)} many further draws found no choice that passes the first checks and could better the front; "
                + $"that is no proof that there is none."),
    };

    private static string Evaluations(long count) => FormattableString.Invariant($"{count} {(count == 1 ? "evaluation" : "evaluations")}");

    private static string Words(SearchProof proof) => proof.IsComplete
        ? FormattableString.Invariant($"Branch and bound with {proof.Simulations} simulations proved that nothing better exists.")
        : string.Create(
            CultureInfo.InvariantCulture,
            $"Branch and bound could not prove it with {proof.Simulations} simulations and {proof.Boxes} boxes; bounds leave at most "
                + $"{100 * proof.Gap:0.0} % of the dominated volume open.");
}
