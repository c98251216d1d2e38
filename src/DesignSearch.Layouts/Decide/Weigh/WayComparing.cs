using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Heaters;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Compares ways to protect the house at equal protection.</summary>
/// <param name="book">Simulates.</param>
/// <param name="finder">Finds the best of a way.</param>
/// <param name="search">Searches a way by itself; null where everything was tried.</param>
internal sealed class WayComparing(TrialBook book, WayFinder finder, WaySearch? search)
{
    private static readonly (TurningKind Kind, string Name)[] Turnings =
        [(TurningKind.Fixed, "fixed"), (TurningKind.TwoPosition, "two positions a day"), (TurningKind.Stepped, "turned in steps"), (TurningKind.Continuous, "follows the sun")];

    private readonly Scenario scenario = book.Scenario;
    private readonly List<Trial> found = [];

    /// <summary>The best of each way that was looked at so far.</summary>
    public IReadOnlyList<Trial> Found => found;

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
            ways.Add(("no collector", Best(l => !l.Has(SolarChoices.Collector), Nearer(best.Layout, search?.WithoutCollector())), ""));
        var mounts = Levels(SolarChoices.Mount).Select(l => l.Part).OfType<CollectorMount>().ToList();
        foreach (var (kind, name) in Turnings.Where(t => mounts.Any(m => m.Turning == t.Kind)))
        {
            var like = ways.LastOrDefault(w => w.Best?.Priced.Built.Find<DesignedSolar>() is not null).Best ?? best;
            var level = ChoiceValue.Of(mounts.First(m => m.Turning == kind));
            var collector = Levels(SolarChoices.Collector).First(l => !l.IsNone);
            var near = like.Layout.Has(SolarChoices.Collector) ? like.Layout : Neighbours.With(scenario, like.Layout, SolarChoices.Collector, collector);
            near = Neighbours.With(scenario, near, SolarChoices.Mount, level);
            var way = Best(l => l.Get(SolarChoices.Mount) is { } m && m.Turning == kind, Nearer(near, search?.Of(kind)));
            ways.Add((name, way, way is null ? WhyNot(near) : ""));
        }

        var holding = ways.Where(w => w.Best is { Holds: true }).OrderBy(w => w.Best!.Figures.LifeCost).ToList();
        var answer = holding.Count switch
        {
            0 => "Of none of these ways was anything found that holds; the nearest of each is shown.",
            1 => Written.Sentence($"Only {Quoted(holding[0].Name)} holds, for {holding[0].Best!.Figures.LifeCost:0} {scenario.Money.Currency} over the years."),
            _ => Written.Sentence($"At equal protection {Quoted(holding[0].Name)} is the cheapest way; {Quoted(holding[1].Name)} costs {holding[1].Best!.Figures.LifeCost - holding[0].Best!.Figures.LifeCost:0} {scenario.Money.Currency} more over the years."),
        };
        return new("Collector: none, fixed or turned?", [.. ways.Select(w => new Way(w.Name, w.Best?.ToWay(), w.WhyNone))], answer);
    }

    private Comparison WithAndWithout(PartChoice choice, IReadOnlyList<ChoiceValue> levels, Trial best)
    {
        var has = best.Layout.Has(choice);
        var other = Neighbours.With(scenario, best.Layout, choice, has ? ChoiceValue.None : levels.First(l => !l.IsNone));
        var counterpart = Best(l => l.Has(choice) != has, other);
        var (with, without) = has ? (best, counterpart) : (counterpart, best);
        return new(
            Capital(choice.Title) + ": with or without?",
            [new("with", with?.ToWay(), with is null ? WhyNot(other) : ""), new("without", without?.ToWay(), without is null ? WhyNot(other) : "")],
            Answer(choice.Title, with, without));
    }

    private Comparison HeaterAlone(Trial best)
    {
        var roots = scenario.Systems.Choices.All.OfType<PartChoice>().Where(c => c.IsRoot).ToList();
        bool Alone(Layout l) => roots.All(c => l.Has(c) == (c == HeaterChoices.Heater));
        var allowsNothing = roots.All(c => c == HeaterChoices.Heater || Levels(c).Any(l => l.IsNone));
        if (!allowsNothing)
            return new("A stand-by heater and nothing else?", [new("heater alone", null, "the scenario fixes another part"), new("the best found", best.ToWay(), "")], "No answer: the scenario does not allow a heater alone.");
        var near = Neighbours.With(scenario, Layout.Bare(scenario.Systems.Choices), HeaterChoices.Heater, Levels(HeaterChoices.Heater).Last(l => !l.IsNone));
        var alone = Best(Alone, near);
        var answer = alone switch
        {
            null => "A heater alone passes no check: " + WhyNot(near) + ".",
            { Holds: false } => Written.Sentence($"The strongest heater allowed does not hold the limit alone: {Trial.Hours(alone.Figures.WorstFrostHours)} left in the worst winter."),
            _ when !best.Holds => "A heater alone holds.",
            _ when alone.Figures.LifeCost <= best.Figures.LifeCost => "A heater alone is the cheapest of all that hold.",
            _ => Written.Sentence($"A heater alone holds too, costs {Difference(best.Figures.BuildPrice - alone.Figures.BuildPrice)} to build and {alone.Figures.LifeCost - best.Figures.LifeCost:0} {scenario.Money.Currency} more over the years."),
        };
        return new("A stand-by heater and nothing else?", [new("heater alone", alone?.ToWay(), alone is null ? WhyNot(near) : ""), new("the best found", best.ToWay(), "")], answer);
    }

    private Trial? Best(Func<Layout, bool> isOfTheWay, Layout? near)
    {
        var best = finder.Best(isOfTheWay, near);
        if (best is not null)
            found.Add(best);
        return best;
    }

    private Layout Nearer(Layout one, Layout? other) => other is not null && book.Of(other).Beats(book.Of(one)) ? other : one;

    private static string Difference(decimal less) => less >= 0 ? Written.Sentence($"{less:0} less") : Written.Sentence($"{-less:0} more");

    private string Answer(string title, Trial? with, Trial? without) => (with, without) switch
    {
        (null, null) => "Neither passes every check.",
        (null, _) => $"Nothing with it passes every check: leave it out.",
        (_, null) => $"Nothing without it passes every check.",
        ({ Holds: true }, { Holds: false }) => Written.Sentence($"Without it nothing was found that holds: at best {Trial.Hours(without.Figures.WorstFrostHours)} left in the worst winter."),
        ({ Holds: false }, { Holds: true }) => "With it nothing was found that holds.",
        ({ Holds: true }, { Holds: true }) when with.Figures.LifeCost <= without.Figures.LifeCost => Written.Sentence($"It pays: without {title} the cheapest that holds costs {without.Figures.LifeCost - with.Figures.LifeCost:0} {scenario.Money.Currency} more over the years."),
        ({ Holds: true }, { Holds: true }) => Written.Sentence($"It does not pay: with {title} the cheapest that holds costs {with.Figures.LifeCost - without.Figures.LifeCost:0} {scenario.Money.Currency} more over the years."),
        _ => Written.Sentence($"Neither holds; with it {with.Figures.FrostDegreeHoursKh:0} K·h of frost are left at best, without it {without.Figures.FrostDegreeHoursKh:0}."),
    };

    private string WhyNot(Layout near)
    {
        var trial = book.Of(near);
        return trial.Failed is { } failed ? $"fails {failed.Title}: {failed.Sentence.TrimEnd('.')}" : "none was found";
    }

    private IReadOnlyList<ChoiceValue> Levels(Choice choice) => scenario.LevelsOf(choice);

    private static string Quoted(string name) => $"\"{name}\"";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
