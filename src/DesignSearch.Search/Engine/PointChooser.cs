using DesignSearch.Search.Archive;
using DesignSearch.Search.Model;
using DesignSearch.Search.Moves;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Engine;

/// <summary>Chooses what is evaluated next: as it is proposed, by what the model promises, by a fresh start, or, where all that fails, from what is left.</summary>
internal sealed class PointChooser
{
    private const int Attempts = 400;
    private const int LeastAttempts = 20;
    private const int FreshAttempts = 50;
    private const int Climbs = 4;
    private const double LeastShare = 0.1;

    // A climb looks at some hundred points, so not every one that pays is taken.
    private const int EveryClimb = 4;

    // One point in twenty is drawn anywhere where pairs of levels are learnt: what is never seen is never learnt.
    private const int EveryDrawn = 20;

    // Where reals meet kinds there is a curve to learn for each kind, so at first it is sixteen in twenty.
    private const long DrawnFirst = 1200;
    private const int DrawnOfFirst = 16;

    // Every second point is of a fresh start; where climbs can fit reals to kinds, every tenth.
    private const long FreshFrom = 500;
    private const int EveryFresh = 2;
    private const int EveryFreshFitted = 10;

    private readonly SearchSettings settings;
    private readonly FrontArchive archive;
    private readonly PointSet met;
    private readonly Draws draws;
    private readonly Proposer proposer;
    private readonly Ranking ranking;
    private readonly Passage passage;
    private readonly LastResort resort;
    private readonly Func<bool> isOver;
    private readonly Credit arms;
    private readonly bool drawsAnywhere;
    private readonly bool isFitted;
    private readonly FreshStart? fresh;
    private int attempts = Attempts;

    /// <summary>Takes what the search is made of.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="space">Its points.</param>
    /// <param name="settings">How it is searched.</param>
    /// <param name="found">Front and parents.</param>
    /// <param name="ranking">The model.</param>
    /// <param name="met">What was met.</param>
    /// <param name="isOver">Whether the search is to end before anything else.</param>
    public PointChooser(
        IProblem problem, SearchSpace space, SearchSettings settings, (FrontArchive Front, Population Parents) found, Ranking ranking, PointSet met, Func<bool> isOver)
    {
        (this.settings, this.ranking, this.met, this.isOver, archive) = (settings, ranking, met, isOver, found.Front);
        draws = new(space);
        proposer = new(space, draws, found.Front, found.Parents);
        passage = new(problem, space, draws, met);
        resort = new(problem, space, archive, draws, passage, met);
        arms = new(ranking.Climber.IsOfUse ? 3 : 2, LeastShare);
        var (reals, objectives) = (space.Variables.Count(v => v.Kind == VariableKind.Real), problem.Objectives.Count);
        drawsAnywhere = reals == 0 && ranking.Climber.IsOfUse;
        isFitted = ranking.Climber.IsOfUse && reals > 0 && objectives > 1;
        fresh = reals > 0 && reals < space.Count && objectives > 1 ? new(space, draws, objectives, found.Parents.Capacity) : null;
    }

    /// <summary>What a point must pass.</summary>
    public Passage Passage => passage;

    /// <summary>Whether all there is was gone through.</summary>
    public bool IsThrough => resort.IsThrough;

    /// <summary>The next point worth evaluating: new, not refused, and not already known to be beaten. Null where none turns up.</summary>
    /// <param name="index">Its place in the search.</param>
    public (double[] Point, Origin Origin)? Next(long index)
    {
        var random = new SplitMixStream(settings.Seed, (ulong)index, 0);
        if (IsDrawn(index, ref random) && passage.Through(draws.Anywhere(ref random), default, ref random) is { } unlike)
            return (unlike, new(Choice.Drawn, -1));
        if (fresh is not null && index >= FreshFrom && random.Below(isFitted ? EveryFreshFitted : EveryFresh) == 0 && Fresh(ref random) is { } begun)
            return (begun, new(Choice.Fresh, fresh.Way));
        var choice = ranking.Ready ? (Choice)arms.Choose(ref random) : Choice.Plain;
        if (choice == Choice.Climbed && random.Below(EveryClimb) > 0)
            choice = Choice.Ranked;
        if (choice != Choice.Plain && MostPromising(index, choice, ref random) is { } promising)
            return promising;
        for (var attempt = 0; attempt < attempts; attempt++)
        {
            var isMade = attempt < attempts * 3 / 4;
            var drawn = isMade ? proposer.Propose(index, ref random, settings.Seed) : draws.Anywhere(ref random);
            if (passage.Through(drawn, isMade ? proposer.Descent : default, ref random) is not { } point || archive.Covers(passage.Bounds))
                continue;
            attempts = Attempts;
            return (point, new(Choice.Plain, proposer.Way));
        }

        // What failed now will mostly fail again soon.
        attempts = Math.Max(LeastAttempts, attempts / 2);
        return resort.Next(settings.RoundsInVain, isOver, ref random) is { } left ? (left, new(Choice.Plain, -1)) : null;
    }

    /// <summary>Takes the result of a point, before anything else learns from it: how it was come by gains by what is new in the front's box.</summary>
    public void Take(EvaluatedPoint point, Origin? origin)
    {
        if (origin is not { Choice: not Choice.Drawn } one)
            return;
        if (one.Choice == Choice.Fresh)
        {
            fresh!.Take(point, one.Way);
            return;
        }

        // While there is no box, and so with one objective, ways stay even.
        if (!ranking.Ready)
            return;
        var gain = point.Evaluation.TotalViolation > 0 ? 0 : Math.Max(0, ranking.Gain(point.Evaluation.Objectives));
        arms.Book((int)one.Choice, gain);
        proposer.Book(one.Way, gain);
    }

    /// <summary>With one objective there is no area to gain: what finds a place among the parents counts.</summary>
    public void Kept(Origin origin, bool isKept) => proposer.Book(origin.Way, isKept ? 1 : 0);

    private bool IsDrawn(long index, ref SplitMixStream random) =>
        isFitted ? random.Below(EveryDrawn) < (index < DrawnFirst ? DrawnOfFirst : 1) : drawsAnywhere && ranking.Ready && random.Below(EveryDrawn) == 0;

    private double[]? Fresh(ref SplitMixStream random)
    {
        for (var attempt = 0; attempt < FreshAttempts; attempt++)
        {
            if (passage.Through(fresh!.Propose(ref random), default, ref random) is not { } point)
                continue;
            fresh.Made();
            return point;
        }

        return null;
    }

    private (double[] Point, Origin Origin)? MostPromising(long index, Choice choice, ref SplitMixStream random)
    {
        (double[] Point, Origin Origin)? chosen = null;
        var most = double.NegativeInfinity;
        // Few or many, from 2 to 32: many trust the model, few leave room where it is wrong.
        var pool = choice == Choice.Climbed ? Climbs : 2 << random.Below(5);
        for (var candidate = 0; candidate < pool; candidate++)
        {
            // Every second climb starts anywhere: what lies in another basin is not found from what is near.
            var isMade = choice != Choice.Climbed || candidate % 2 == 0;
            var point = isMade ? proposer.Propose(index, ref random, settings.Seed) : draws.Anywhere(ref random);
            var (descent, way) = isMade ? (proposer.Descent, proposer.Way) : (default, -1);
            if (choice == Choice.Climbed)
            {
                if (passage.Refuses(point) || ranking.Climber.From(point, met, p => !passage.Refuses(p), descent, ref random) is not { } climbed)
                    continue;
                point = climbed;
            }

            if (met.Contains(SearchSpace.KeyOf(point)))
            {
                draws.Disturb(point, ref random);
                if (met.Contains(SearchSpace.KeyOf(point)))
                    continue;
            }

            if (passage.Refuses(point))
            {
                met.Add(SearchSpace.KeyOf(point));
                continue;
            }

            if (archive.Covers(passage.Bounds))
                continue;
            var promise = ranking.Promise(point, passage.Bounds, descent);
            if (promise > most)
                (chosen, most) = ((point, new(choice, way)), promise);
        }

        if (chosen is { } one)
            passage.LetThrough(one.Point);
        return chosen;
    }
}
