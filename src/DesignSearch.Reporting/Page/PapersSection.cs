using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Papers;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Tables;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The papers of the first pick, each on a sheet of its own in print: what to try, what to ask, what to write down.</summary>
internal static class PapersSection
{
    private const int LogRows = 21;

    /// <summary>The section.</summary>
    public static Markup Of(JudgedLayout layout, ScenarioRecord scenario)
    {
        var files = PapersTables.Of(layout, scenario.Currency)
            .Select(p => Markup.Of($""" <a href="{ListFile.Folder}/{p.Name}">{p.Paper}</a>"""));
        return Markup.When(layout.Papers.Log.Count > 0, () => Markup.Of($"""
            <section class="papers" aria-labelledby="papers"><h2 id="papers">Papers for building and running it</h2>
            <p class="screen">Each prints on a sheet of its own. The same for a spreadsheet:{files}.</p>
            {Steps(layout)}{Enquiry(layout, scenario, Trade.Electrician)}{Enquiry(layout, scenario, Trade.Plumber)}{Log(layout)}</section>

            """));
    }

    private static Markup Steps(JudgedLayout layout) => Markup.When(layout.Papers.Steps.Count > 0, () => Markup.Of($"""
        <h3 class="sheet">Try it before you leave it alone</h3>
        <p>In this order; tick what is as it should be and write down what was measured. Where it says licensed, the licensed
        person measures.</p>
        {PageTable.Of(
            $"Commissioning of layout {Say.Whole(layout.Rank)}",
            [new("what"), new("how"), new("wanted"), new("measured"), new("done")],
            layout.Papers.Steps.Select(s => new Cell[]
            {
                PlainText.Name(s.Thing),
                Say.Capital(PlainText.Sentence(s.IsLicensed ? s.Try + " (licensed)" : s.Try)),
                Say.Capital(PlainText.Sentence(s.Wanted)),
                s.Unit.Length > 0 ? "………… " + PlainText.Name(s.Unit) : "",
                new(Markup.Of($"""<input type="checkbox" aria-label="done: {PlainText.Name(s.Thing)}">""")),
            }))}

        """));

    private static Markup Enquiry(JudgedLayout layout, ScenarioRecord scenario, Trade trade)
    {
        var facts = layout.Papers.Enquiry.Where(f => f.Trade == Trade.Electrician == (trade == Trade.Electrician)).ToList();
        return Markup.When(facts.Count > 0, () => Markup.Of($"""
            <h3 class="sheet">Enquiry: {PapersTables.Asked(trade)}</h3>
            <p>Please make an offer for the licensed work on home-made heat for a greenhouse at {PlainText.Name(scenario.PlaceName)}:
            {PlainText.Name(layout.Title)}. What stands here is a plan and no order; what you decide after the local code goes first.</p>
            {PageTable.Of(
                $"Enquiry for layout {Say.Whole(layout.Rank)}, {PapersTables.Asked(trade)}",
                [new("about"), new("planned or wanted")],
                facts.Select(f => new Cell[] { PlainText.Name(f.What), Say.Capital(PlainText.Sentence(f.Value)) }))}

            """));
    }

    private static Markup Log(JudgedLayout layout) => Markup.Of($"""
        <h3 class="sheet">Log sheet</h3>
        <p>{PapersTables.HowOften} What is written down in a mild week shows what is wrong before the hard one.</p>
        <div class="log">{PageTable.Of(
            $"Log of layout {Say.Whole(layout.Rank)}",
            [new("date"), .. layout.Papers.Log.Select(c => new Column(PapersTables.Head(c))), new("remarks")],
            Enumerable.Repeat<Cell[]>(["………", .. Enumerable.Repeat<Cell>("", layout.Papers.Log.Count + 1)], LogRows))}</div>
        """);
}
