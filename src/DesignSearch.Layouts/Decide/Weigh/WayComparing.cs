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
/// <param name="bounds">What is proved of ways, by their keys; empty for nothing.</param>
internal sealed class WayComparing(TrialBook book, WayFinder finder, WaySearch? search, IReadOnlyDictionary<string, WayBound> bounds)
{
    private readonly Scenario scenario = book.Scenario;
    private readonly List<Trial> found = [];

    private string Currency => scenario.Money.Currency;

    /// <summary>The best of each way that was looked at so far.</summary>
    public IReadOnlyList<Trial> Found => found;

    /// <summary>How many ways there can be to search for: one a part that may be left out, one a way of turning, a heater alone.</summary>
    public static int MostWays(Scenario scenario) => scenario.Systems.Choices.All.OfType<PartChoice>().Count(c => c.MayBeNone && c.IsRoot) + WayClass.Turnings.Count + 1;

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
        foreach (var kind in WayClass.Turnings.Where(t => mounts.Any(m => m.Turning == t)))
        {
            var like = ways.LastOrDefault(w => w.Best?.Priced.Built.Find<DesignedSolar>() is not null).Best ?? best;
            var level = ChoiceValue.Of(mounts.First(m => m.Turning == kind));
            var collector = Levels(SolarChoices.Collector).First(l => !l.IsNone);
            var near = like.Layout.Has(SolarChoices.Collector) ? like.Layout : Neighbours.With(scenario, like.Layout, SolarChoices.Collector, collector);
            near = Neighbours.With(scenario, near, SolarChoices.Mount, level);
            var asked = search?.Best(WayClass.Mount(kind));
            var way = Best(l => l.Get(SolarChoices.Mount) is { } m && m.Turning == kind, Nearer(near, asked?.Layout));
            ways.Add((WayWords.Mount(kind), way, way is null ? WhyNot(near) : ""));
        }

        var holding = ways.Where(w => w.Best is { Holds: true })
            .Select(w => (w.Name, Way: w.Best!, Cost: w.Best!.Figures.LifeCost)).OrderBy(w => w.Cost).ToList();
        var isProved = search is null;
        var answer = holding.Count switch
        {
            0 => WayWords.NoMountHolds,
            1 => WayWords.OnlyMount(holding[0].Name, holding[0].Cost, Currency, isProved),
            _ when Apart.IsNone(holding[0].Cost, holding[1].Cost) => WayWords.MountsAlike(holding[0].Name, holding[1].Name, holding[1].Cost - holding[0].Cost, Currency, isProved),
            _ => WayWords.CheapestMount(holding[0].Name, holding[1].Name, More(holding[1].Way, holding[0].Way, holding[1].Name), Currency),
        };
        if (holding.Count > 0)
            answer = string.Join(' ', ways.Where(w => w.Best is not { Holds: true } && bounds.ContainsKey(w.Name))
                .Select(w => WayWords.NoneOfIt(w.Name, bounds[w.Name].NoneBelow, holding[0].Cost, Currency)).Prepend(answer));
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
            Answer(choice, with, without, asked));
    }

    private Comparison HeaterAlone(Trial best)
    {
        var roots = scenario.Systems.Choices.All.OfType<PartChoice>().Where(c => c.IsRoot).ToList();
        var allowsNothing = roots.All(c => c == HeaterChoices.Heater || Levels(c).Any(l => l.IsNone));
        if (!allowsNothing)
        {
            var fixedParts = new Way(WayWords.Alone, null, WayWords.AnotherIsFixed);
            return new(WayWords.HeaterAlone, [fixedParts, new(WayWords.BestFound, best.ToWay(), "")], WayWords.AloneNotAllowed);
        }

        var strongest = Levels(HeaterChoices.Heater).Last(l => !l.IsNone);
        var near = Neighbours.With(scenario, Layout.Bare(scenario.Systems.Choices), HeaterChoices.Heater, strongest);
        var asked = search?.Best(WayClass.HeaterAlone);
        var alone = Best(WayClass.HeaterAlone.Holds, Nearer(near, asked?.Layout));
        var isGoneThrough = search is null || asked is { IsExact: true };
        var isNoneProved = isGoneThrough || (bounds.TryGetValue(WayClass.HeaterAlone.Key, out var bound) && bound.NoneBelow is null);
        var answer = alone switch
        {
            null => WayWords.AlonePassesNone(WhyNot(near), isNoneProved),
            { Holds: false } => WayWords.AloneIsTooWeak(alone.Figures.WorstFrostHours, isNoneProved),
            _ when !best.Holds => WayWords.OnlyAloneHolds,
            _ when alone.Figures.LifeCost <= best.Figures.LifeCost => WayWords.AloneIsCheapest(isProved: search is null),
            _ => WayWords.AloneCostsMore(
                best.Figures.BuildPrice - alone.Figures.BuildPrice, alone.Figures.LifeCost - best.Figures.LifeCost, Currency, isGoneThrough),
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
    private WayFound? Asked(PartChoice choice, bool has) => search?.Best(WayClass.Part(choice, has));

    // A bound of the way against the best found: whichever way the truth lies, it is between the two.
    private Apart More(Trial way, Trial best, string key)
    {
        var (cost, least) = (way.Figures.LifeCost, best.Figures.LifeCost);
        return search is not null && bounds.TryGetValue(key, out var bound)
            ? new(cost - least, (bound.NoneBelow ?? cost) - least, false, bound.IsProvedWithoutCollector && !way.Layout.Has(SolarChoices.Collector))
            : new(cost - least, null, search is null);
    }

    private Layout Nearer(Layout one, Layout? other) => other is not null && book.Of(other).Beats(book.Of(one)) ? other : one;

    private Way Way(string name, Trial? best, Layout near) => new(name, best?.ToWay(), best is null ? WhyNot(near) : "");

    private string Answer(PartChoice choice, Trial? with, Trial? without, WayFound? asked)
    {
        string Nothing(string way, Trial left, Trial best, WayClass of) => bounds.ContainsKey(of.Key) && asked is { IsExact: false }
            ? WayWords.NothingHolds(way, left.Figures.WorstFrostHours, asked.Tried, bounds[of.Key].NoneBelow, best.Figures.LifeCost, Currency)
            : WayWords.NothingHolds(way, left.Figures.WorstFrostHours, asked);
        return (with, without) switch
        {
            (null, null) => WayWords.NeitherPasses,
            (null, _) => WayWords.NothingWithPasses,
            (_, null) => WayWords.NothingWithoutPasses,
            ({ Holds: true }, { Holds: false }) => Nothing(WayWords.WithoutIt, without, with, WayClass.Part(choice, false)),
            ({ Holds: false }, { Holds: true }) => Nothing(WayWords.WithIt, with, without, WayClass.Part(choice, true)),
            ({ Holds: true }, { Holds: true }) => Compared(choice, with, without),
            _ => WayWords.NeitherHolds(with.Figures.FrostDegreeHoursKh, without.Figures.FrostDegreeHoursKh),
        };
    }

    private string Compared(PartChoice choice, Trial with, Trial without)
    {
        var pays = with.Figures.LifeCost <= without.Figures.LifeCost;
        var more = pays ? More(without, with, WayClass.Part(choice, false).Key) : More(with, without, WayClass.Part(choice, true).Key);
        return Apart.IsNone(with.Figures.LifeCost, without.Figures.LifeCost) ? WayWords.MakesNoDifference(more, Currency)
            : pays ? WayWords.Pays(choice.Title, more, Currency)
            : WayWords.DoesNotPay(choice.Title, more, Currency);
    }

    private string WhyNot(Layout near)
    {
        var trial = book.Of(near);
        return trial.Failed is { } failed ? WayWords.Fails(failed) : WayWords.NoneFound;
    }

    private IReadOnlyList<ChoiceValue> Levels(Choice choice) => scenario.LevelsOf(choice);
}
