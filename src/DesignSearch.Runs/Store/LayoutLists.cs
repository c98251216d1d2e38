using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Runs.Store;

/// <summary>Writes each ranked layout as a file that can be simulated.</summary>
internal static class LayoutLists
{
    public static void Write(RunFolder folder, StoredRun run, Scenario scenario)
    {
        if (Directory.Exists(folder.Lists))
        {
            foreach (var old in Directory.EnumerateFiles(folder.Lists, "*.toml"))
                File.Delete(old);
        }

        foreach (var ranked in run.Judgement.Ranking)
            SafeFile.Write(Path.Combine(folder.Lists, ListFile.LayoutNameOf(ranked)), Text(ranked, run, scenario));
    }

    private static string Text(JudgedLayout ranked, StoredRun run, Scenario scenario) =>
        LayoutFile.Write(ranked.ToLayout(scenario), FormattableString.Invariant($"No. {ranked.Rank} of {run.Scenario.Name}: {ranked.Title}"));
}
