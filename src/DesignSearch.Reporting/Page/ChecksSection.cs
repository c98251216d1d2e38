using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The rules a layout must meet, with what is left of each allowance.</summary>
internal static class ChecksSection
{
    /// <summary>The section.</summary>
    public static Markup Of(JudgedLayout layout, StoredRun run) => Markup.When(layout.Checks.Count > 0, () => Markup.Of($"""
        <section aria-labelledby="checks"><h2 id="checks">Checks, the tightest first</h2>
        {Cost(run)}{Table(layout)}</section>

        """));

    /// <summary>The checks of a layout as a table.</summary>
    public static Markup Table(JudgedLayout layout) => PageTable.Of(
        $"Checks of layout {Say.Whole(layout.Rank)}",
        [new("check"), new("result"), new("room left", IsFigure: true), new("what was found"), new("where the rule comes from")],
        layout.Checks.Select(c => new Cell[] { PlainText.Name(c.Title), c.Passed ? "ok" : "missed", Cell.Figure(Spare(c), c.Margin), PlainText.Sentence(c.Sentence), c.Source }),
        sortable: true);

    private static Markup Cost(StoredRun run)
    {
        var costs = run.Weighing.CheckCosts;
        if (!run.Judgement.Ranking.Any(l => l.Holds))
            return Markup.None;
        return costs.Count == 0
            ? Markup.Of($"<p>No safety rule raised the price: nothing cheaper was found that only a check refuses.</p>\n")
            : Markup.Of(
                $"<p>The check that cost most is {PlainText.Name(costs[0].Check)}: without it {PlainText.Name(costs[0].Title)} would "
                    + $"hold for {Say.Money(costs[0].LifeCost, run.Scenario.Currency)} over the years, "
                    + $"{Say.Money(costs[0].Saved, run.Scenario.Currency)} less. {costs[0].Sentence}</p>\n");
    }

    private static string Spare(Check check) => Math.Abs(check.Margin) > 10 ? (check.Margin > 0 ? "plenty" : "far off") : Say.Percent(check.Margin);
}
