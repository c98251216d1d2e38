using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Heaters;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Compares ways to protect the house at equal protection.</summary>
/// <param name="book">Simulates.</param>
/// <param name="finder">Finds the best of a way.</param>
/// <param name="search">Searches a way by itself; null where everything was tried.</param>
internal sealed class WayComparing(TrialBook book, WayFinder finder, WaySearch? search)
{
    private const decimal LeastApart = 0.03m;

    private static readonly TurningKind[] Turnings = [TurningKind.Fixed, TurningKind.TwoPosition, TurningKind.Stepped, TurningKind.Continuous];

    private readonly Scenario scenario = book.Scenario;
    private readonly List<Trial> found = [];

    private string Currency => scenario.Money.Currency;

    /// <summary>The best of each way that was looked at so far.</summary>
    public IReadOnlyList<Trial> Found => found;

    /// <summary>How many ways there can be to search for: one a part that may be left out, one a way of turning, a heater alone.</summary>
    public static int MostWays(Scenario scenario) => scenario.Systems.Choices.All.OfType<PartChoice>().Count(c => c.MayBeNone && c.IsRoot) + Turnings.Length + 1;

    /// <summary>The comparisons, that of the mounts first.</summary>
    /// <param name="best">The best layout known.</param>
    public IReadOnlyList<Comparison> Of(Trial best)
    {
        var comparisons = new List<Comparison>();
        if (Levels(SolarChoices.Collector).Any(l => !l.IsNone))
            comparisons.Add(Mounts(best));
        foreach (var choice in scenario.Systems.Choices.All.OfType<PartChoice>().Where(c => c.MayBeNone && c.IsRoot && c != SolarChoices.Collector))
        {
            var levels = Levels(choice);
            if (levels.Any(l => l.IsNone) && levels.Any(l => !l.IsNone))
                comparisons.Add(WithAndWithout(choice, levels, best));
        }

        if (Levels(HeaterChoices.Heater).Any(l => !l.IsNone))
            comparisons.Add(HeaterAlone(best));
        return comparisons;
    }

    private Comparison Mounts(Trial best)
    {
        var ways = new List<(string Name, Trial? Best, string WhyNone)>();
        if (Levels(SolarChoices.Collector).Any(l => l.IsNone))
        {
            var bare = Best(l => !l.Has(SolarChoices.Collector), Nearer(best.Layout, Asked(SolarChoices.Collector, has: false)?.Layout));
            ways.Add((WayWords.NoCollector, bare, ""));
        }

        var mounts = Levels(SolarChoices.Mount).Select(l => l.Part).OfType<CollectorMount>().ToList();
        foreach (var kind in Turnings.Where(t => mounts.Any(m => m.Turning == t)))
        {
            var like = ways.LastOrDefault(w => w.Best?.Priced.Built.Find<DesignedSolar>() is not null).Best ?? best;
            var level = ChoiceValue.Of(mounts.First(m => m.Turning == kind));
            var collector = Levels(SolarChoices.Collector).First(l => !l.IsNone);
            var near = like.Layout.Has(SolarChoices.Collector)
                ? like.Layout
                : Neighbours.With(scenario, like.Layout, SolarChoices.Collector, collector);
            near = Neighbours.With(scenario, near, SolarChoices.Mount, level);
            var asked = search?.Best(WayWords.Mount(kind), (c, l) => c == SolarChoices.Collector ? !l.IsNone
                : c != SolarChoices.Mount || (l.Part is CollectorMount m && m.Turning == kind));
            var way = Best(l => l.Get(SolarChoices.Mount) is { } m && m.Turning == kind, Nearer(near, asked?.Layout));
            ways.Add((WayWords.Mount(kind), way, way is null ? WhyNot(near) : ""));
        }

        var holding = ways.Where(w => w.Best is { Holds: true })
            .Select(w => (w.Name, Cost: w.Best!.Figures.LifeCost)).OrderBy(w => w.Cost).ToList();
        var answer = holding.Count switch
        {
            0 => WayWords.NoMountHolds,
            1 => WayWords.OnlyMount(holding[0].Name, holding[0].Cost, Currency, isProved: search is null),
            _ when Alike(holding[0].Cost, holding[1].Cost) => WayWords.MountsAlike(
                holding[0].Name, holding[1].Name, holding[1].Cost - holding[0].Cost, Currency, isProved: search is null),
            _ => WayWords.CheapestMount(
                holding[0].Name, holding[1].Name, holding[1].Cost - holding[0].Cost, Currency, isProved: search is null),
        };
        return new(WayWords.Mounts, [.. ways.Select(w => new Way(w.Name, w.Best?.ToWay(), w.WhyNone))], answer);
    }

    private Comparison WithAndWithout(PartChoice choice, IReadOnlyList<ChoiceValue> levels, Trial best)
    {
        var has = best.Layout.Has(choice);
        var other = Neighbours.With(scenario, best.Layout, choice, has ? ChoiceValue.None : levels.First(l => !l.IsNone));
        var asked = Asked(choice, !has);
        var counterpart = Best(l => l.Has(choice) != has, Nearer(other, asked?.Layout));
        var (with, without) = has ? (best, counterpart) : (counterpart, best);
        return new(
            WayWords.WithOrWithout(choice.Title),
            [Way(WayWords.With, with, other), Way(WayWords.Without, without, other)],
            Answer(choice.Title, with, without, asked));
    }

    private Comparison HeaterAlone(Trial best)
    {
        var roots = scenario.Systems.Choices.All.OfType<PartChoice>().Where(c => c.IsRoot).ToList();
        bool Alone(Layout l) => roots.All(c => l.Has(c) == (c == HeaterChoices.Heater));
        var allowsNothing = roots.All(c => c == HeaterChoices.Heater || Levels(c).Any(l => l.IsNone));
        if (!allowsNothing)
        {
            var fixedParts = new Way(WayWords.Alone, null, WayWords.AnotherIsFixed);
            return new(WayWords.HeaterAlone, [fixedParts, new(WayWords.BestFound, best.ToWay(), "")], WayWords.AloneNotAllowed);
        }

        var strongest = Levels(HeaterChoices.Heater).Last(l => !l.IsNone);
        var near = Neighbours.With(scenario, Layout.Bare(scenario.Systems.Choices), HeaterChoices.Heater, strongest);
        var asked = search?.Best(
            WayWords.Alone, (c, l) => c is not PartChoice root || !roots.Contains(root) || l.IsNone == (c != HeaterChoices.Heater));
        var alone = Best(Alone, Nearer(near, asked?.Layout));
        var answer = alone switch
        {
            null => WayWords.AlonePassesNone(WhyNot(near)),
            { Holds: false } => WayWords.AloneIsTooWeak(alone.Figures.WorstFrostHours),
            _ when !best.Holds => WayWords.OnlyAloneHolds,
            _ when alone.Figures.LifeCost <= best.Figures.LifeCost => WayWords.AloneIsCheapest(isProved: search is null),
            _ => WayWords.AloneCostsMore(
                best.Figures.BuildPrice - alone.Figures.BuildPrice, alone.Figures.LifeCost - best.Figures.LifeCost, Currency),
        };
        return new(WayWords.HeaterAlone, [Way(WayWords.Alone, alone, near), new(WayWords.BestFound, best.ToWay(), "")], answer);
    }

    private Trial? Best(Func<Layout, bool> isOfTheWay, Layout? near)
    {
        var best = finder.Best(isOfTheWay, near);
        if (best is not null)
            found.Add(best);
        return best;
    }

    // A question of its own: the choice forced, the cheapest that holds looked for. Null where everything was tried before.
    private WayFound? Asked(PartChoice choice, bool has) =>
        search?.Best((has ? WayWords.With : WayWords.Without) + choice.Key, (c, l) => c != choice || l.IsNone == !has);

    private Layout Nearer(Layout one, Layout? other) => other is not null && book.Of(other).Beats(book.Of(one)) ? other : one;

    private Way Way(string name, Trial? best, Layout near) => new(name, best?.ToWay(), best is null ? WhyNot(near) : "");

    private string Answer(string title, Trial? with, Trial? without, WayFound? asked) => (with, without) switch
    {
        (null, null) => WayWords.NeitherPasses,
        (null, _) => WayWords.NothingWithPasses,
        (_, null) => WayWords.NothingWithoutPasses,
        ({ Holds: true }, { Holds: false }) => WayWords.NothingWithoutHolds(without.Figures.WorstFrostHours, asked),
        ({ Holds: false }, { Holds: true }) => WayWords.NothingWithHolds(with.Figures.WorstFrostHours, asked),
        ({ Holds: true }, { Holds: true }) when Alike(with.Figures.LifeCost, without.Figures.LifeCost) =>
            WayWords.MakesNoDifference(Math.Abs(without.Figures.LifeCost - with.Figures.LifeCost), Currency, isProved: search is null),
        ({ Holds: true }, { Holds: true }) when with.Figures.LifeCost <= without.Figures.LifeCost =>
            WayWords.Pays(title, without.Figures.LifeCost - with.Figures.LifeCost, Currency, isProved: search is null),
        ({ Holds: true }, { Holds: true }) =>
            WayWords.DoesNotPay(title, with.Figures.LifeCost - without.Figures.LifeCost, Currency, isProved: search is null),
        _ => WayWords.NeitherHolds(with.Figures.FrostDegreeHoursKh, without.Figures.FrostDegreeHoursKh),
    };

    // Two figures as near as this say nothing of which is the better (docs/guide.md: two layouts a few per cent apart are equal).
    private static bool Alike(decimal one, decimal other) => Math.Abs(one - other) < LeastApart * Math.Min(one, other);

    private string WhyNot(Layout near)
    {
        var trial = book.Of(near);
        return trial.Failed is { } failed ? WayWords.Fails(failed) : WayWords.NoneFound;
    }

    private IReadOnlyList<ChoiceValue> Levels(Choice choice) => scenario.LevelsOf(choice);
}
