using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Finds the cheapest layout of one way that holds: the best that the search tried, then better ones by changing one choice at a time.</summary>
/// <param name="book">Simulates.</param>
/// <param name="tried">What the search tried, every check passed, with life cost and frost degree-hours.</param>
/// <param name="isExact">True when the search tried everything, so that there is nothing left to look for.</param>
internal sealed class WayFinder(TrialBook book, IReadOnlyList<(Layout Layout, double LifeCost, double FrostKh)> tried, bool isExact)
{
    private const int MostSteps = 8;

    // A step that saves less of the cost, or takes less of the frost away, is the last.
    private const double WorthOfCost = 0.01;
    private const double WorthOfFrost = 0.1;

    private readonly List<Layout> refused = [];
    private readonly HashSet<Layout> isRefused = [];

    /// <summary>Layouts that were cheap enough but fail one check before they are simulated.</summary>
    public IReadOnlyCollection<Layout> Refused => refused;

    /// <summary>The best of a way; null where nothing of it passes every check.</summary>
    /// <param name="isOfTheWay">Says whether a layout is of the way.</param>
    /// <param name="near">A layout to come from where it does better than what the search tried of the way; null for none.</param>
    public Trial? Best(Func<Layout, bool> isOfTheWay, Layout? near = null)
    {
        Trial? best = null;
        var least = tried.Where(t => isOfTheWay(t.Layout))
            .Select(t => ((double, double, Layout)?)(t.FrostKh, t.LifeCost, t.Layout))
            .MinBy(t => (t!.Value.Item1, t.Value.Item2));
        if (least is { } start)
            best = book.Of(start.Item3);
        if (near is not null && isOfTheWay(near) && book.Of(near) is var other && (best is null || other.Beats(best)))
            best = other;
        // What was simulated for another question may answer this one.
        if (!isExact && book.Best(isOfTheWay) is { } known && (best is null || known.Beats(best)))
            best = known;
        for (var step = 0; best is not null && step < MostSteps && !isExact; step++)
        {
            var better = Step(best, isOfTheWay);
            if (better is null)
                break;
            var isLast = best.Holds ? (double)better.Figures.LifeCost > (1 - WorthOfCost) * (double)best.Figures.LifeCost
                : !better.Holds && better.Figures.FrostDegreeHoursKh > (1 - WorthOfFrost) * best.Figures.FrostDegreeHoursKh;
            best = better;
            if (isLast)
                break;
        }

        return best is { Figures.PassesChecks: true } ? best : null;
    }

    private void Refuse(Layout layout)
    {
        if (isRefused.Add(layout))
            refused.Add(layout);
    }

    private Trial? Step(Trial from, Func<Layout, bool> isOfTheWay)
    {
        var worth = new List<Layout>();
        foreach (var (_, layout) in Neighbours.All(book.Scenario, from.Layout).Where(n => isOfTheWay(n.Layout)))
        {
            var priced = book.Assessor.Price(layout);
            if (from.Holds && priced.BuildPrice + priced.Replacements >= from.Figures.LifeCost)
                continue;
            var failed = book.Assessor.Checks(priced, []).Count(c => !c.Passed);
            if (failed == 0)
                worth.Add(layout);
            else if (failed == 1 && from.Holds)
                Refuse(layout);
        }

        Trial? best = null;
        foreach (var trial in book.Of(worth))
        {
            if (trial.Beats(best ?? from))
                best = trial;
        }

        return best;
    }
}
