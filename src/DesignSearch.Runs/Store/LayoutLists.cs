using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Runs.Store;

/// <summary>Writes each ranked layout as a file that can be simulated.</summary>
internal static class LayoutLists
{
    public static void Write(RunFolder folder, StoredRun run, IReadOnlyList<Layout> layouts)
    {
        if (Directory.Exists(folder.Lists))
        {
            foreach (var old in Directory.EnumerateFiles(folder.Lists, "*.toml"))
                File.Delete(old);
        }

        var bySlug = layouts.DistinctBy(Judge.Slug).ToDictionary(Judge.Slug, StringComparer.Ordinal);
        foreach (var ranked in run.Judgement.Ranking)
            SafeFile.Write(Path.Combine(folder.Lists, ListFile.LayoutNameOf(ranked)), LayoutFile.Write(bySlug[ranked.Slug], FormattableString.Invariant($"No. {ranked.Rank} of {run.Scenario.Name}: {ranked.Title}")));
    }
}
