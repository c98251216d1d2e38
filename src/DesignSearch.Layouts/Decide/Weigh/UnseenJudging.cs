using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Words;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Judges layouts on winters that they were not chosen on.</summary>
internal static class UnseenJudging
{
    // Far from the seed of the design winters.
    private const ulong OtherSeeds = 1_000_003;

    /// <summary>How the winters are made, in a sentence.</summary>
    public static string From(Scenario scenario) => scenario.Climate.Record is null
        ? Written.Sentence($"Unseen winters: {scenario.Search.UnseenWinters} made from the monthly means with seeds that the search never saw, the lowest night of each drawn anew.")
        : Written.Sentence($"Unseen winters: {scenario.Search.UnseenWinters} drawn from the weather file, whole spells in a new order and the lowest night of each drawn anew; they know no weather that the file does not hold.");

    /// <summary>Judges layouts.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="layouts">The layouts with what the design winters did to them.</param>
    /// <param name="design">The design winters.</param>
    /// <returns>One entry a layout.</returns>
    public static IReadOnlyList<UnseenWinters> Of(Scenario scenario, IReadOnlyList<Trial> layouts, WinterSet design)
    {
        var winters = WinterSet.Of(scenario, WinterSet.Drawn(scenario, scenario.Search.UnseenWinters, scenario.Climate.Seed + OtherSeeds).Select(w => (w, 1.0 / scenario.Search.UnseenWinters)));
        var assessor = new LayoutAssessor(scenario, winters);
        var outcomes = assessor.Simulate([LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices)), .. layouts.Select(l => l.Priced.Built)]);
        var bareHeld = outcomes[0].Count(o => o.FrostHours == 0);
        return [.. layouts.Select((l, i) => One(scenario, l, outcomes[i + 1], winters, design, bareHeld))];
    }

    private static UnseenWinters One(Scenario scenario, Trial layout, Outcome[] outcomes, WinterSet winters, WinterSet design, int bareHeld)
    {
        var (count, held) = (outcomes.Length, outcomes.Count(o => o.FrostHours == 0));
        var (low, high) = WilsonInterval.Of(held, count);
        var worst = Enumerable.Range(0, count).MinBy(i => outcomes[i].LowestAirC);
        var winter = winters.Winters[worst].Winter;
        var chosen = design.Winters.Select((w, i) => (w.Winter.Kind, w.Weight, Outcome: layout.Outcomes[i])).Where(w => w.Kind != WinterKind.Hard).ToList();
        if (chosen.Count == 0)
            chosen = [.. design.Winters.Select((w, i) => (w.Winter.Kind, w.Weight, layout.Outcomes[i]))];
        double Chosen(Func<Outcome, double> of) => chosen.Sum(w => w.Weight * of(w.Outcome)) / chosen.Sum(w => w.Weight);
        var unseen = new UnseenWinters
        {
            Count = count,
            Held = held,
            HeldAtLeast = low,
            HeldAtMost = high,
            BareHeld = bareHeld,
            LowestAirC = outcomes[worst].LowestAirC,
            WorstHour = winter.Start.AddHours(outcomes[worst].ColdestHour),
            OutsideThenC = winter.AirC[outcomes[worst].ColdestHour],
            WorstFrostHours = outcomes.Max(o => o.FrostHours),
            FrostDegreeHoursKh = outcomes.Average(o => o.FrostDegreeHoursKh),
            ChosenFrostDegreeHoursKh = Chosen(o => o.FrostDegreeHoursKh),
            LeastStandbyKwh = outcomes.Min(o => o.StandbyKwh),
            MeanStandbyKwh = outcomes.Average(o => o.StandbyKwh),
            MostStandbyKwh = outcomes.Max(o => o.StandbyKwh),
            ChosenStandbyKwh = Chosen(o => o.StandbyKwh),
            Sentence = Written.Sentence($"It held in {held} of {count} winters it was not chosen on; so few say only that in the long run it should hold in {100 * low:0} to {100 * high:0} of 100 (such a range is right 19 times in 20)."),
            Flattery = "",
        };
        return unseen with { Flattery = Flattery(unseen, scenario) };
    }

    private static string Flattery(UnseenWinters unseen, Scenario scenario)
    {
        var (frost, kwh) = (unseen.FrostDegreeHoursKh - unseen.ChosenFrostDegreeHoursKh, unseen.MeanStandbyKwh - unseen.ChosenStandbyKwh);
        var money = kwh * (double)scenario.Money.TariffPerKwh;
        var less = new List<string>();
        if (frost > Math.Max(0.5, 0.02 * unseen.ChosenFrostDegreeHoursKh))
            less.Add(Written.Sentence($"{frost.ToString(frost < 10 ? "0.0" : "0", System.Globalization.CultureInfo.InvariantCulture)} K·h of frost"));
        if (kwh > Math.Max(1, 0.02 * unseen.ChosenStandbyKwh))
            less.Add(Written.Sentence($"{kwh:0} kWh of stand-by heat ({money:0} {scenario.Money.Currency})"));
        return less.Count == 0
            ? "The winters it was chosen on did not flatter it: on the others it did as well on average."
            : $"The winters it was chosen on flattered it: leaving the hard one out, they had {string.Join(" and ", less)} a winter less than the unseen ones on average.";
    }
}
