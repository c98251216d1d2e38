using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Judges layouts on winters that they were not chosen on.</summary>
internal static class UnseenJudging
{
    // Far from the seed of the design winters.
    private const ulong OtherSeeds = 1_000_003;

    /// <summary>Seed of the winters.</summary>
    public static ulong Seed(Scenario scenario) => scenario.Climate.Seed + OtherSeeds;

    /// <summary>How the winters are made, in a sentence.</summary>
    public static string From(Scenario scenario) => scenario.Climate.Record is null
        ? UnseenWords.MadeFromMonths(scenario.Search.UnseenWinters)
        : UnseenWords.DrawnFromRecord(scenario.Search.UnseenWinters);

    /// <summary>The winters, as many as the scenario asks for.</summary>
    public static IReadOnlyList<Winter> Winters(Scenario scenario) => DesignWinters.Drawn(scenario, scenario.Search.UnseenWinters, Seed(scenario));

    /// <summary>Judges layouts.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="layouts">The layouts with what the design winters did to them.</param>
    /// <param name="design">The design winters.</param>
    /// <param name="drawn">The winters to judge on.</param>
    /// <returns>One entry a layout.</returns>
    public static IReadOnlyList<UnseenWinters> Of(Scenario scenario, IReadOnlyList<Trial> layouts, WinterSet design, IReadOnlyList<Winter> drawn)
    {
        var count = drawn.Count;
        var winters = WinterSet.Of(scenario, drawn.Select(w => (w, 1.0 / count)));
        var assessor = new LayoutAssessor(scenario, winters);
        var bare = LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices));
        var outcomes = assessor.Simulate([bare, .. layouts.Select(l => l.Priced.Built)]);
        var bareHeld = outcomes[0].Count(o => o.FrostHours == 0);
        return [.. layouts.Select((l, i) => One(scenario, l, outcomes[i + 1], winters, design, bareHeld))];
    }

    private static UnseenWinters One(Scenario scenario, Trial layout, Outcome[] outcomes, WinterSet winters, WinterSet design, int bareHeld)
    {
        var (count, held) = (outcomes.Length, outcomes.Count(o => o.FrostHours == 0));
        var (low, high) = WilsonInterval.Of(held, count);
        var worst = Enumerable.Range(0, count).MinBy(i => outcomes[i].LowestAirC);
        var winter = winters.Winters[worst].Winter;
        var all = design.Winters.Select((w, i) => (w.Winter.Kind, w.Weight, Outcome: layout.Outcomes[i])).ToList();
        var chosen = all.Where(w => w.Kind != WinterKind.Hard).ToList();
        if (chosen.Count == 0)
            chosen = all;
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
            Sentence = UnseenWords.Held(held, count, low, high),
            Flattery = "",
        };
        return unseen with { Flattery = Flattery(unseen, scenario) };
    }

    private static string Flattery(UnseenWinters unseen, Scenario scenario)
    {
        var frost = unseen.FrostDegreeHoursKh - unseen.ChosenFrostDegreeHoursKh;
        var kwh = unseen.MeanStandbyKwh - unseen.ChosenStandbyKwh;
        var money = kwh * (double)scenario.Money.TariffPerKwh;
        var less = new List<string>();
        if (frost > Math.Max(0.5, 0.02 * unseen.ChosenFrostDegreeHoursKh))
            less.Add(UnseenWords.Frost(frost));
        if (kwh > Math.Max(1, 0.02 * unseen.ChosenStandbyKwh))
            less.Add(UnseenWords.Standby(kwh, money, scenario.Money.Currency));
        return less.Count == 0 ? UnseenWords.NotFlattered : UnseenWords.Flattered(less);
    }
}
