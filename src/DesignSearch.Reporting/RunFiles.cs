using DesignSearch.Files;
using DesignSearch.Reporting.Drawings;
using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Page;
using DesignSearch.Reporting.Tables;
using DesignSearch.Reporting.Words;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting;

/// <summary>Writes everything a person reads of a finished run, from what the run stored and nothing else.</summary>
public static class RunFiles
{
    /// <summary>
    /// Writes <c>front.csv</c>, <c>ranking.csv</c>, <c>pareto.png</c>, <c>pareto.svg</c>, <c>report.html</c>, <c>figures.html</c> and a shopping list
    /// <c>lists/RANK-SLUG.csv</c>, all of them in <c>lists.xlsx</c>, and where it needs current a wiring table <c>lists/RANK-SLUG-wiring.csv</c>, its papers, and pictures
    /// <c>lists/RANK-SLUG-PICTURE.svg</c> for each ranked layout; the same run gives the same bytes. Lists that an earlier search
    /// wrote are removed, other files in the folder are left alone.
    /// </summary>
    /// <param name="run">The stored run.</param>
    /// <param name="folder">The run's folder; it is made if it is missing.</param>
    /// <returns>What could not be made, each in a sentence; the page says the same. Empty where all could.</returns>
    /// <exception cref="InputException">The stored run contradicts itself; nothing was written.</exception>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static IReadOnlyList<string> WriteAll(StoredRun run, string folder)
    {
        var separator = run.Scenario.Separator;
        byte[] Table(string text) => SpreadsheetTable.Bytes(text, separator);
        (string, byte[]) ListTable(string name, string text) => (ListFile.Folder + "/" + name, Table(text));
        var unmade = run.Unmade.ToList();
        var files = new List<(string Name, byte[] Content)>();
        void Make(string what, Func<IEnumerable<(string Name, byte[] Content)>> make)
        {
            try
            {
                files.AddRange(make().ToList());
            }
            catch (Exception e) when (e is not (InputException or OutOfMemoryException))
            {
                unmade.Add(Unmade.Sentence(what, e));
            }
        }

        foreach (var layout in run.Judgement.Ranking)
        {
            var number = FormattableString.Invariant($"of layout no. {layout.Rank}");
            Make("The shopping list " + number, () => [ListTable(ListFile.NameOf(layout), ShoppingList.Of(layout, run.Scenario.Currency))]);
            Make("The wiring table " + number, () => layout.Wires.Count > 0 ? [ListTable(WiringTable.NameOf(layout), WiringTable.Of(layout))] : []);
            Make("The papers " + number, () => PapersTables.Of(layout, run.Scenario.Currency).Select(p => ListTable(p.Item2, p.Item3)));
            Make("The pictures " + number, () => PictureSet.Of(layout).Select(p => List(PictureSet.NameOf(layout, p), p.AsFile(layout.FullTitle))));
        }

        if (run.Judgement.Ranking.Count > 0)
            Make(ListBook.Name, () => [(ListBook.Name, ListBook.Of(run.Judgement.Ranking, run.Scenario.Currency))]);
        Make("front.csv", () => [("front.csv", Table(LayoutTable.Front(run)))]);
        Make("ranking.csv", () => [("ranking.csv", Table(LayoutTable.Ranking(run)))]);
        Make("pareto.png", () => [("pareto.png", FrontPicture.Png(FrontChart.Of(run, FrontReading.Frost)))]);
        Make("pareto.svg", () => [("pareto.svg", RunOutputs.Bytes(FrontPicture.Svg(FrontChart.Of(run, FrontReading.Frost))))]);
        Make(FiguresPage.Name, () => [(FiguresPage.Name, RunOutputs.Bytes(FiguresPage.Of(run)))]);
        Make("report.html", () => [("report.html", RunOutputs.Bytes(ReportPage.Of(run with { Unmade = unmade }, unmade.Add)))]);
        if (files.TrueForAll(f => f.Name != "report.html"))
            files.Add(("report.html", RunOutputs.Bytes(ReportPage.Bare(run, unmade))));
        RunOutputs.Of(new RunFolder(folder)).Replace(
            name => name == ListBook.Name || (name.StartsWith(ListFile.Folder + "/", StringComparison.Ordinal) && !name.EndsWith(".toml", StringComparison.Ordinal)), files);
        return unmade;
    }

    private static (string, byte[]) List(string name, string text) => (ListFile.Folder + "/" + name, RunOutputs.Bytes(text));
}
