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
        const string ending = ".toml";
        RunOutputs.Of(folder).Replace(
            name => name.EndsWith(ending, StringComparison.Ordinal),
            run.Judgement.Ranking.Select(l => (ListFile.Folder + "/" + ListFile.LayoutNameOf(l), RunOutputs.Bytes(Text(l, run, scenario)))));
    }

    private static string Text(JudgedLayout ranked, StoredRun run, Scenario scenario) =>
        LayoutFile.Write(ranked.ToLayout(scenario), FormattableString.Invariant($"No. {ranked.Rank} of {run.Scenario.Name}: {ranked.Title}"));
}
