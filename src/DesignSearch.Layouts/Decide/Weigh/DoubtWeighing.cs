using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Money;
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
    private const double MoreLoss = 1.2;
    private const double LessLoss = 0.8;
    private const double MoreLeaks = 2;
    private const decimal Dearer = 1.3m;
    private const decimal Cheaper = 0.7m;

    private static readonly (string What, Func<HouseNumbers, HouseNumbers> Change)[] House =
    [
        (DoubtWords.CoverLoses(MoreLoss), h => Loss(h, MoreLoss)),
        (DoubtWords.CoverLoses(LessLoss), h => Loss(h, LessLoss)),
        (DoubtWords.AirLeaks(MoreLeaks), h => Leaks(h, MoreLeaks)),
    ];

    private readonly LayoutAssessor coldSky = Colder(book, SkyDoubtK);
    private readonly LayoutAssessor drySoil = Dry(book);

    /// <summary>Every doubt of a layout.</summary>
    /// <param name="pick">The layout.</param>
    /// <param name="ranking">What else could be chosen.</param>
    public IReadOnlyList<Doubt> Of(Trial pick, IReadOnlyList<JudgedLayout> ranking)
    {
        var built = pick.Priced.Built;
        var plant = built.Installation;
        var changed = House.Select(d => (d.What, Built: built with { Installation = plant with { House = d.Change(plant.House) } })).ToList();
        changed.AddRange(built.Systems.SelectMany(s => s.Doubts).Select(d => (d.What, built with { Installation = d.Change(plant) })));
        var outcomes = book.Assessor.Simulate([.. changed.Select(c => c.Built)]);
        return
        [
            .. changed.Select((c, i) => Judged(c.What, pick, book.Assessor, outcomes[i])),
            Judged(DoubtWords.ColderSky(SkyDoubtK), pick, coldSky, coldSky.Simulate([built])[0]),
            Judged(DoubtWords.DrySoil, pick, drySoil, drySoil.Simulate([built])[0]),
            Parts(pick, ranking, Dearer),
            Parts(pick, ranking, Cheaper),
            Tariff(pick, ranking, Dearer),
            Tariff(pick, ranking, Cheaper),
        ];
    }

    private Doubt Judged(string what, Trial pick, LayoutAssessor assessor, IReadOnlyList<Outcome> outcomes)
    {
        var figures = assessor.Figures(pick.Priced, outcomes, pick.Figures.PassesChecks);
        var standby = assessor.Weighted(outcomes, (o, _) => o.StandbyKwh);
        var limit = book.Scenario.Greenhouse.FrostLimitC;
        var sentence = (figures.Holds, pick.Holds) switch
        {
            (true, _) => DoubtWords.StillHolds(standby, pick.StandbyKwh),
            (false, true) => DoubtWords.HoldsNoLonger(figures.WorstFrostHours, limit - figures.LowestAirC),
            _ => DoubtWords.MissesAnyway(figures.WorstFrostHours, pick.Figures.WorstFrostHours),
        };
        return new(what, figures.Holds, figures.WorstFrostHours, figures.LowestAirC, standby, figures.LifeCost, sentence);
    }

    private Doubt Parts(Trial pick, IReadOnlyList<JudgedLayout> ranking, decimal factor)
    {
        decimal Cost(decimal buildPrice, RunningCost running) =>
            factor * (buildPrice + running.ReplacementsPresentValue) + Current(running) + running.UpkeepPresentValue;
        var (price, budget) = (Cents(factor * pick.Figures.BuildPrice), book.Scenario.Money.Budget);
        var tooDear = price > budget ? DoubtWords.OverBudget(price, budget) : "";
        var cost = Cents(Cost(pick.Figures.BuildPrice, pick.Figures.Running));
        var affordable = ranking.Where(l => factor * l.BuildPrice <= budget);
        return Money(DoubtWords.PartsCost(factor), pick, ranking, affordable, cost, l => Cost(l.BuildPrice, l.Running), tooDear);
    }

    private Doubt Tariff(Trial pick, IReadOnlyList<JudgedLayout> ranking, decimal factor)
    {
        decimal Cost(decimal buildPrice, RunningCost running) =>
            buildPrice + running.ReplacementsPresentValue + running.UpkeepPresentValue + factor * Current(running);
        var cost = Cents(Cost(pick.Figures.BuildPrice, pick.Figures.Running));
        return Money(DoubtWords.CurrentCosts(factor), pick, ranking, ranking, cost, l => Cost(l.BuildPrice, l.Running), "");
    }

    private Doubt Money(
        string what,
        Trial pick,
        IReadOnlyList<JudgedLayout> ranking,
        IEnumerable<JudgedLayout> affordable,
        decimal cost,
        Func<JudgedLayout, decimal> costOf,
        string tooDear)
    {
        bool IsPick(JudgedLayout? layout) => layout is not null && layout.ToLayout(book.Scenario).Equals(pick.Layout);
        var cheapest = affordable.Where(l => l.Holds).MinBy(costOf);
        var wasCheapest = IsPick(ranking.Where(l => l.Holds).MinBy(l => l.LifeCost));
        var figures = pick.Figures;
        var sentence = tooDear.Length > 0 ? tooDear
            : cost == figures.LifeCost ? DoubtWords.NoChange
            : !wasCheapest || cheapest is null ? DoubtWords.Costs(cost, figures.LifeCost)
            : IsPick(cheapest) ? DoubtWords.StaysCheapest(cost)
            : DoubtWords.AnotherIsCheaper(cheapest, costOf(cheapest), cost);
        var holds = pick.Holds && tooDear.Length == 0;
        return new(what, holds, figures.WorstFrostHours, figures.LowestAirC, pick.StandbyKwh, cost, sentence);
    }

    private static decimal Current(RunningCost running) =>
        running.PresentValue - running.ReplacementsPresentValue - running.UpkeepPresentValue;

    private static HouseNumbers Loss(HouseNumbers house, double factor) =>
        house with { CoverAreaM2 = factor * house.CoverAreaM2, EdgeLossWPerMK = factor * house.EdgeLossWPerMK };

    private static HouseNumbers Leaks(HouseNumbers house, double factor) => house with
    {
        AirChangesPerHour = factor * house.AirChangesPerHour,
        AirChangesPerHourPerMPerS = factor * house.AirChangesPerHourPerMPerS,
    };

    private static LayoutAssessor Colder(TrialBook book, double kelvin)
    {
        var winters = book.Assessor.Winters.Winters.Select(w => (Sky(w.Winter, -kelvin), w.Weight));
        return new LayoutAssessor(book.Scenario, WinterSet.Of(book.Scenario, winters));
    }

    private static LayoutAssessor Dry(TrialBook book)
    {
        var soil = Math.Min(DrySoilWPerMK, book.Scenario.Assumptions.SoilConductivityWPerMK);
        var scenario = book.Scenario with { Assumptions = book.Scenario.Assumptions.With(HouseAssumptions.SoilConductivityWPerMK, soil) };
        return new LayoutAssessor(scenario, WinterSet.Of(scenario, book.Assessor.Winters.Winters.Select(w => (w.Winter, w.Weight))));
    }

    private static decimal Cents(decimal amount) => decimal.Round(amount, 2, MidpointRounding.AwayFromZero);

    private static Winter Sky(Winter winter, double moreK) => winter with { SkyC = [.. winter.SkyC.Select(s => s + moreK)] };
}
