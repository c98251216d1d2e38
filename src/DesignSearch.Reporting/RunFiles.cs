using DesignSearch.Files;
using DesignSearch.Reporting.Drawings;
using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Page;
using DesignSearch.Reporting.Tables;
using DesignSearch.Runs.Store;

namespace DesignSearch.Reporting;

/// <summary>Writes everything a person reads of a finished run, from what the run stored and nothing else.</summary>
public static class RunFiles
{
    /// <summary>
    /// Writes <c>front.csv</c>, <c>ranking.csv</c>, <c>pareto.png</c>, <c>pareto.svg</c>, <c>report.html</c> and a shopping list
    /// <c>lists/RANK-SLUG.csv</c>, and where it needs current a wiring table <c>lists/RANK-SLUG-wiring.csv</c>, its papers, and pictures
    /// <c>lists/RANK-SLUG-PICTURE.svg</c> for each ranked layout; the same run gives the same bytes. Lists of an earlier search are removed,
    /// other files in the folder are left alone.
    /// </summary>
    /// <param name="run">The stored run.</param>
    /// <param name="folder">The run's folder; it is made if it is missing.</param>
    /// <exception cref="InputException">The stored run contradicts itself; nothing was written.</exception>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static void WriteAll(StoredRun run, string folder)
    {
        var lists = run.Judgement.Ranking.ToDictionary(ListFile.NameOf, l => ShoppingList.Of(l, run.Scenario.Currency));
        foreach (var layout in run.Judgement.Ranking.Where(l => l.Wires.Count > 0))
            lists.Add(WiringTable.NameOf(layout), WiringTable.Of(layout));
        foreach (var (_, name, paper) in run.Judgement.Ranking.SelectMany(l => PapersTables.Of(l, run.Scenario.Currency)))
            lists.Add(name, paper);
        foreach (var layout in run.Judgement.Ranking)
        {
            foreach (var picture in PictureSet.Of(layout))
                lists.Add(PictureSet.NameOf(layout, picture), picture.AsFile(layout.FullTitle));
        }

        var chart = FrontChart.Of(run);
        var (front, ranking, page) = (LayoutTable.Front(run), LayoutTable.Ranking(run), ReportPage.Of(run));
        var (png, svg) = (FrontPicture.Png(chart), FrontPicture.Svg(chart));

        foreach (var (name, list) in lists)
            SafeFile.Write(Path.Combine(folder, ListFile.Folder, name), list);
        RemoveStaleLists(Path.Combine(folder, ListFile.Folder), lists.Keys);
        SafeFile.Write(Path.Combine(folder, "front.csv"), front);
        SafeFile.Write(Path.Combine(folder, "ranking.csv"), ranking);
        SafeFile.Write(Path.Combine(folder, "pareto.png"), png);
        SafeFile.Write(Path.Combine(folder, "pareto.svg"), svg);
        SafeFile.Write(Path.Combine(folder, "report.html"), page);
    }

    private static void RemoveStaleLists(string folder, IReadOnlyCollection<string> current)
    {
        if (!Directory.Exists(folder))
            return;
        foreach (var file in Directory.EnumerateFiles(folder, "*.*").ToList())
        {
            var name = Path.GetFileName(file);
            if ((ListFile.IsListName(name) || PictureSet.IsPictureName(name)) && !current.Contains(name))
                File.Delete(file);
        }
    }
}
