using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>What the next sum of money buys, and in what order to build the first pick.</summary>
internal static class MoneySection
{
    /// <summary>The first pick in stages.</summary>
    public static Markup Stages(StoredRun run)
    {
        var (stages, currency) = (run.Weighing.Stages, run.Scenario.Currency);
        var columns = new Column[]
        {
            new("stage"),
            new("add"),
            new($"to pay now [{PlainText.Cut(currency, 24)}]", IsFigure: true),
            new("spent so far", IsFigure: true),
            new("frost hours left, worst winter", IsFigure: true),
            new("frost degree-hours left", IsFigure: true),
            new("lowest air", IsFigure: true),
            new("electric heat a winter", IsFigure: true),
        };
        var rows = stages.Select(s => new Cell[]
        {
            Say.Whole(s.Number),
            Say.Capital(PlainText.Name(s.Adds)),
            Say.Cents(s.Price),
            Say.Cents(s.PriceSoFar),
            Say.TwoFigures(s.WorstFrostHours),
            Say.DegreeHours(s.FrostDegreeHoursKh),
            PlantAir.Of(s.LowestAirC, run.Scenario.FrostLimitC, s.Plants),
            Say.Kwh(s.StandbyKwh),
        });
        return Markup.When(stages.Count > 0, () => Markup.Of($"""
            <section aria-labelledby="stages"><h2 id="stages">What to build first</h2>
            <p>{Finding(run, stages)} What takes most frost away for its price comes first; every stage can be used as it stands.</p>
            {PageTable.Of("Order of building", columns, rows)}{stages.Select(Care)}</section>

            """));
    }

    private static Markup Care(Stage stage) =>
        Markup.When(stage.TakeCare.Length > 0, () => Markup.Of($"""
            <p class="wide-words"><strong>Take care from stage {Say.Whole(stage.Number)} on, until the house holds:</strong>
            {PlainText.Sentence(stage.TakeCare)}</p>

            """));

    private static string Finding(StoredRun run, IReadOnlyList<Stage> stages)
    {
        var (bare, first) = (run.Judgement.BareHouse, stages[0]);
        var less = first.FrostDegreeHoursKh < bare.FrostDegreeHoursKh && bare.FrostDegreeHoursKh > 0
            ? $"takes {Say.Percent(1 - (first.FrostDegreeHoursKh / bare.FrostDegreeHoursKh))} of the frost (hours × degrees) away this very winter"
            : "comes first because the rest stands on it";
        return $"{Say.Capital(PlainText.Name(first.Adds))} for {Say.Money(first.Price, run.Scenario.Currency)} {less}.";
    }

    /// <summary>What the next sum of money buys.</summary>
    public static Markup Purchases(StoredRun run)
    {
        var (purchases, currency) = (run.Weighing.Purchases, PlainText.Cut(run.Scenario.Currency, 24));
        var step = Say.Whole((double)run.Weighing.PurchaseStep);
        var columns = new Column[]
        {
            new($"with up to [{currency}]", IsFigure: true),
            new("best of the front"),
            new("build price", IsFigure: true),
            new("frost degree-hours left [K·h]", IsFigure: true),
            new("taken away by this step [K·h]", IsFigure: true),
            new("frost hours left, worst winter", IsFigure: true),
        };
        var rows = purchases.Select(p => new Cell[]
        {
            Cell.Figure(Say.Whole((double)p.UpTo), (double)p.UpTo),
            p.Rank == 0 ? Say.Capital(PlainText.Name(p.Title)) : $"{Say.Whole(p.Rank)}: {PlainText.Name(p.Title)}",
            Cell.Figure(Say.Whole((double)p.BuildPrice), (double)p.BuildPrice),
            Cell.Figure(Say.TwoFigures(p.FrostDegreeHoursKh), p.FrostDegreeHoursKh),
            Cell.Figure(Say.TwoFigures(p.TakenAwayKh), p.TakenAwayKh),
            Cell.Figure(Say.TwoFigures(p.WorstFrostHours), p.WorstFrostHours),
        });
        var most = purchases.Count > 1 ? purchases.Skip(1).MaxBy(p => p.TakenAwayKh) : null;
        var last = purchases[^1];
        var finding = most is null
            ? "No sum within the budget buys less frost."
            : $"The step to {Say.Money(most.UpTo, run.Scenario.Currency)} takes most frost away, "
                + $"{Say.DegreeHours(most.TakenAwayKh)}; beyond {Say.Money(last.BuildPrice, run.Scenario.Currency)} more money buys "
                + $"no less frost on this front.";
        return Markup.Of($"""
            <section aria-labelledby="next"><h2 id="next">What the next {step} {currency} buy</h2>
            <p>{finding} Each row is {step} or more above the one before; a step that buys nothing better has no row.</p>
            <div class="fronts">{PageTable.Of("What more money buys", columns, rows)}</div></section>

            """);
    }
}
