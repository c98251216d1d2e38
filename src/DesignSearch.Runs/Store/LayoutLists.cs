using DesignSearch.Files;
using DesignSearch.Layouts;
using DesignSearch.Search;

namespace DesignSearch.Runs;

/// <summary>Writes each ranked layout as a file that can be simulated.</summary>
internal static class LayoutLists
{
    public static void Write(RunFolder folder, StoredRun run, LayoutSpace space, SearchResult result)
    {
        if (Directory.Exists(folder.Lists))
        {
            foreach (var old in Directory.EnumerateFiles(folder.Lists, "*.toml"))
                File.Delete(old);
        }

        var layouts = result.Front.Concat(result.BestByMerit).DistinctBy(p => p.Index).Select(p => space.At(p.Point)).DistinctBy(Judge.Slug).ToDictionary(Judge.Slug, StringComparer.Ordinal);
        foreach (var ranked in run.Judgement.Ranking)
            SafeFile.Write(Path.Combine(folder.Lists, FormattableString.Invariant($"{ranked.Rank}-{ranked.Slug}.toml")), LayoutFile.Write(layouts[ranked.Slug], FormattableString.Invariant($"No. {ranked.Rank} of {run.Scenario.Name}: {ranked.Title}")));
    }
}
