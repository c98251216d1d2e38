using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting.Page;

/// <summary>The picked layouts and those of the front in full, each folded away until it is asked for.</summary>
internal static class LayoutsSection
{
    /// <summary>The section.</summary>
    public static Markup Of(StoredRun run, IReadOnlySet<int> detailed)
    {
        var layouts = run.Judgement.Ranking.Where(l => detailed.Contains(l.Rank)).ToList();
        var names = PickNames.Of(run.Judgement).ToDictionary(p => p.Layout.Rank, p => " (" + Say.Joined(p.Names) + ")");
        return Markup.When(layouts.Count > 0, () => Markup.Of($"""
            <section class="layouts" aria-labelledby="layouts"><h2 id="layouts">Layouts in full</h2>
            <p>The picks and the layouts of the front, in the order of the ranking. The others stand in <a href="ranking.csv">ranking.csv</a> and the folder lists.</p>
            {layouts.Select(l => One(l, run, names.GetValueOrDefault(l.Rank, "")))}</section>

            """));
    }

    private static Markup One(JudgedLayout layout, StoredRun run, string names)
    {
        var number = Say.Whole(layout.Rank);
        var choices = layout.Choices.Select(c => new Cell[] { PlainText.Name(c.Key), PlainText.Name(c.Value) });
        Markup[] tables =
        [
            PageTable.Of($"Choices of layout {number}", [new("choice"), new("value")], choices),
            WintersSection.Table(run, $"Winters of layout {number}", [("Layout " + number, layout)]),
            ChecksSection.Table(layout),
            Markup.When(
                layout.Bill.Count > 0,
                () => ShoppingSection.Table(layout, run.Scenario.Currency, $"Parts of layout {number}")),
        ];
        Markup[] advice =
        [
            Markup.When(layout.Settings.Count > 0, () => SettingsSection.Table(layout)),
            Markup.When(layout.Wires.Count > 0, () => WiringSection.Table(layout)),
            Markup.When(layout.Cautions.Count > 0, () => CautionsSection.List(layout)),
        ];
        var list = ListFile.PathOf(layout);
        return Markup.Of($"""
            <details class="layout" id="layout-{layout.Rank}"><summary>Layout {number}: {PlainText.Name(layout.FullTitle)}{names}</summary>
            {PicksSection.Figures(layout, run.Scenario)}
            {tables}<p>For a spreadsheet: <a href="{list}">{list}</a></p>
            {advice}</details>

            """);
    }
}
