using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Simulates a layout again with one doubtful figure otherwise.</summary>
/// <param name="book">Where the design winters are.</param>
internal sealed class DoubtWeighing(TrialBook book)
{
    private const decimal Dearer = 1.3m;
    private const decimal Cheaper = 0.7m;

    private readonly Lazy<IReadOnlyList<(string What, LayoutAssessor Assessor)>> around = new(() => Around(book));

    /// <summary>Every doubt of a layout.</summary>
    /// <param name="pick">The layout.</param>
    /// <param name="ranking">What else could be chosen.</param>
    public IReadOnlyList<Doubt> Of(Trial pick, IReadOnlyList<JudgedLayout> ranking)
    {
        var built = pick.Priced.Built;
        var plant = built.Installation;
        var changed = (from doubt in Unknowns.Of(built)
                       from end in doubt.Figure.Ends
                       select (What: doubt.Figure.What(end), Built: built with { Installation = doubt.Change(plant, end) })).ToList();
        var outcomes = book.Assessor.Simulate([.. changed.Select(c => c.Built)]);
        return
        [
            .. changed.Select((c, i) => Judged(c.What, pick, book.Assessor, outcomes[i])),
            .. around.Value.Select(a => Judged(a.What, pick, a.Assessor, a.Assessor.Simulate([built])[0])),
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

    // Another sky or another soil is about the house, not in the plant: winters of their own.
    private static IReadOnlyList<(string What, LayoutAssessor Assessor)> Around(TrialBook book)
    {
        var (scenario, winters) = (book.Scenario, book.Assessor.Winters.Winters);
        var soil = Unknowns.Soil(scenario);
        LayoutAssessor Under(Scenario own, double colderK) => new(own, WinterSet.Of(own, winters.Select(w => (DoubtDraws.Colder(w.Winter, colderK), w.Weight))));
        return
        [
            .. Unknowns.Sky.Ends.Select(kelvin => (Unknowns.Sky.What(kelvin), Under(scenario, kelvin))),
            .. soil.Ends.Select(w => (soil.What(w), Under(Unknowns.WithSoil(scenario, w), 0))),
        ];
    }

    private static decimal Cents(decimal amount) => decimal.Round(amount, 2, MidpointRounding.AwayFromZero);
}
