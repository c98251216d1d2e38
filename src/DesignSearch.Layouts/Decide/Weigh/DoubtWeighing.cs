using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Words;
using DesignSearch.Season;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Simulates a layout again with one doubtful figure otherwise.</summary>
/// <param name="book">Where the design winters are.</param>
internal sealed class DoubtWeighing(TrialBook book)
{
    // A clear-sky formula misses by some 15 W/m² (from memory), which are about 5 K of a winter sky.
    private const double SkyDoubtK = 5;
    private const double DrySoilWPerMK = 0.5;
    private const string SoilKey = "soil_conductivity_w_per_mk";

    private static readonly (string What, Func<HouseNumbers, HouseNumbers> Change)[] House =
    [
        ("the cover loses a fifth more", h => Loss(h, 1.2)),
        ("the cover loses a fifth less", h => Loss(h, 0.8)),
        ("twice the air leaks", h => h with { AirChangesPerHour = 2 * h.AirChangesPerHour, AirChangesPerHourPerMPerS = 2 * h.AirChangesPerHourPerMPerS }),
    ];

    private readonly LayoutAssessor coldSky = new(book.Scenario, WinterSet.Of(book.Scenario, book.Assessor.Winters.Winters.Select(w => (Sky(w.Winter, -SkyDoubtK), w.Weight))));
    private readonly LayoutAssessor drySoil = Dry(book);

    /// <summary>Every doubt of a layout.</summary>
    /// <param name="pick">The layout.</param>
    /// <param name="ranking">What else could be chosen.</param>
    public IReadOnlyList<Doubt> Of(Trial pick, IReadOnlyList<JudgedLayout> ranking)
    {
        var built = pick.Priced.Built;
        var changed = House.Select(d => (d.What, Built: built with { Installation = built.Installation with { House = d.Change(built.Installation.House) } })).ToList();
        changed.AddRange(built.Systems.SelectMany(s => s.Doubts).Select(d => (d.What, built with { Installation = d.Change(built.Installation) })));
        var outcomes = book.Assessor.Simulate([.. changed.Select(c => c.Built)]);
        return
        [
            .. changed.Select((c, i) => Judged(c.What, pick, book.Assessor, outcomes[i])),
            Judged(Written.Sentence($"the clear sky is {SkyDoubtK:0} K colder"), pick, coldSky, coldSky.Simulate([built])[0]),
            Judged("the soil is dry", pick, drySoil, drySoil.Simulate([built])[0]),
            Parts(pick, ranking, 1.3m, "parts cost 30 % more"),
            Parts(pick, ranking, 0.7m, "parts cost 30 % less"),
            Tariff(pick, ranking, 1.3m, "current costs 30 % more"),
            Tariff(pick, ranking, 0.7m, "current costs 30 % less"),
        ];
    }

    private Doubt Judged(string what, Trial pick, LayoutAssessor assessor, IReadOnlyList<Outcome> outcomes)
    {
        var figures = assessor.Figures(pick.Priced, outcomes, pick.Figures.PassesChecks);
        var standby = assessor.Weighted(outcomes, (o, _) => o.StandbyKwh);
        var limit = book.Scenario.Greenhouse.FrostLimitC;
        var sentence = (figures.Holds, pick.Holds) switch
        {
            (true, _) => Written.Sentence($"It still holds; the stand-by heater needs {standby:0} instead of {pick.StandbyKwh:0} kWh."),
            (false, true) => Written.Sentence($"It no longer holds: {Trial.Hours(figures.WorstFrostHours)} in the worst winter, {limit - figures.LowestAirC:0.0} K below the limit."),
            _ => Written.Sentence($"It has {figures.WorstFrostHours} instead of {pick.Figures.WorstFrostHours} frost hours in the worst winter."),
        };
        return new(what, figures.Holds, figures.WorstFrostHours, figures.LowestAirC, standby, figures.LifeCost, sentence);
    }

    private Doubt Parts(Trial pick, IReadOnlyList<JudgedLayout> ranking, decimal factor, string what)
    {
        decimal Cost(LayoutFigures f) => Cents(factor * (f.BuildPrice + f.Running.ReplacementsPresentValue) + f.Running.PresentValue - f.Running.ReplacementsPresentValue);
        var (price, budget) = (Cents(factor * pick.Figures.BuildPrice), book.Scenario.Money.Budget);
        return Money(what, pick, ranking, Cost(pick.Figures), l => factor * (l.BuildPrice + l.Running.ReplacementsPresentValue) + l.Running.PresentValue - l.Running.ReplacementsPresentValue, l => factor * l.BuildPrice <= budget,
            price > budget ? Written.Sentence($"It then costs {price:0} to build, over the budget of {budget:0}.") : "");
    }

    private Doubt Tariff(Trial pick, IReadOnlyList<JudgedLayout> ranking, decimal factor, string what)
    {
        var own = pick.Figures.BuildPrice + pick.Figures.Running.ReplacementsPresentValue + factor * (pick.Figures.Running.PresentValue - pick.Figures.Running.ReplacementsPresentValue);
        return Money(what, pick, ranking, Cents(own), l => l.BuildPrice + l.Running.ReplacementsPresentValue + factor * (l.Running.PresentValue - l.Running.ReplacementsPresentValue), _ => true, "");
    }

    private Doubt Money(string what, Trial pick, IReadOnlyList<JudgedLayout> ranking, decimal cost, Func<JudgedLayout, decimal> costOf, Func<JudgedLayout, bool> affordable, string tooDear)
    {
        bool IsPick(JudgedLayout? layout) => layout is not null && layout.ToLayout(book.Scenario).Equals(pick.Layout);
        var cheapest = ranking.Where(l => l.Holds && affordable(l)).MinBy(costOf);
        var wasCheapest = IsPick(ranking.Where(l => l.Holds).MinBy(l => l.LifeCost));
        var sentence = tooDear.Length > 0 ? tooDear
            : cost == pick.Figures.LifeCost ? "It changes nothing for this layout."
            : !wasCheapest || cheapest is null ? Written.Sentence($"It then costs {cost:0} over the years instead of {pick.Figures.LifeCost:0}.")
            : IsPick(cheapest) ? Written.Sentence($"It stays the cheapest of the ranking that holds, at {cost:0} over the years.")
            : Written.Sentence($"No. {cheapest.Rank} of the ranking ({cheapest.Title}) would then be cheaper: {costOf(cheapest):0} against {cost:0}.");
        return new(what, pick.Holds && tooDear.Length == 0, pick.Figures.WorstFrostHours, pick.Figures.LowestAirC, pick.StandbyKwh, cost, sentence);
    }

    private static HouseNumbers Loss(HouseNumbers house, double factor) => house with { CoverAreaM2 = factor * house.CoverAreaM2, EdgeLossWPerMK = factor * house.EdgeLossWPerMK };

    private static LayoutAssessor Dry(TrialBook book)
    {
        var scenario = book.Scenario with { Assumptions = book.Scenario.Assumptions.With(SoilKey, Math.Min(DrySoilWPerMK, book.Scenario.Assumptions.SoilConductivityWPerMK)) };
        return new LayoutAssessor(scenario, WinterSet.Of(scenario, book.Assessor.Winters.Winters.Select(w => (w.Winter, w.Weight))));
    }

    private static decimal Cents(decimal amount) => decimal.Round(amount, 2, MidpointRounding.AwayFromZero);

    private static Winter Sky(Winter winter, double moreK) => winter with { SkyC = [.. winter.SkyC.Select(s => s + moreK)] };
}
