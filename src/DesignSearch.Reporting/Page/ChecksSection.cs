using DesignSearch.Layouts;

namespace DesignSearch.Reporting;

/// <summary>The rules a layout must meet, with what is left of each allowance.</summary>
internal static class ChecksSection
{
    /// <summary>The section.</summary>
    public static Markup Of(JudgedLayout layout) => Markup.When(layout.Checks.Count > 0, () => Markup.Of($"""
        <section aria-labelledby="checks"><h2 id="checks">Checks, the tightest first</h2>
        {Table(layout)}</section>

        """));

    /// <summary>The checks of a layout as a table.</summary>
    public static Markup Table(JudgedLayout layout) => PageTable.Of(
        $"Checks of layout {Say.Whole(layout.Rank)}",
        [new("check"), new("result"), new("to spare", IsFigure: true), new("what was found"), new("where the rule comes from")],
        layout.Checks.Select(c => new Cell[] { PlainText.Name(c.Title), c.Passed ? "met" : "missed", Cell.Figure(Spare(c), c.Margin), c.Sentence, c.Source }),
        sortable: true);

    private static string Spare(Check check) => Math.Abs(check.Margin) > 10 ? (check.Margin > 0 ? "plenty" : "far off") : Say.Percent(check.Margin);
}
