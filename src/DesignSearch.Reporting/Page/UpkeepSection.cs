using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Page;

/// <summary>What the first pick asks for year by year.</summary>
internal static class UpkeepSection
{
    /// <summary>The section.</summary>
    public static Markup Of(JudgedLayout layout) => Markup.When(layout.Upkeep.Count > 0, () => Markup.Of($"""
        <section aria-labelledby="upkeep"><h2 id="upkeep">Looking after it</h2>
        <p>{Total(layout)} The hours are an order of magnitude and stand in no cost above.</p>
        {Table(layout)}</section>

        """));

    private static string Total(JudgedLayout layout) => $"About {Say.TwoFigures(layout.Upkeep.Sum(u => u.HoursPerYear))} hours of your own work a year.";

    private static Markup Table(JudgedLayout layout) => PageTable.Of(
        $"Upkeep of layout {Say.Whole(layout.Rank)}",
        [new("work"), new("when"), new("hours a year", IsFigure: true)],
        layout.Upkeep.Select(u => new Cell[] { PlainText.Sentence(u.What), PlainText.Name(u.When), Cell.Figure(Say.Plain(u.HoursPerYear), u.HoursPerYear) }));
}
