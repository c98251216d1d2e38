using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Store;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>Many runs become one table, whatever state each is in.</summary>
public sealed class GatherTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("designsearch-gather-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Each_run_has_a_row_with_its_answer_or_with_why_it_has_none()
    {
        Copy("b-finished", "run.json", "scenario.toml");
        Copy("deeper/a-not-begun", "scenario.toml");
        Copy("c-under-way", "scenario.toml", "journal");
        Copy("d-spoilt", "scenario.toml");
        File.WriteAllText(Path.Combine(folder, "d-spoilt", "run.json"), "{}");
        Directory.CreateDirectory(Path.Combine(folder, "no-run"));
        var (code, output, _) = Cli.Run("gather", folder);
        Assert.Equal(ExitCode.Done, code);
        var rows = output.TrimEnd().Split('\n').Skip(1).Select(r => r.TrimEnd('\r')).ToList();
        Assert.Equal(["b-finished,finished", "c-under-way,under way", "d-spoilt,unreadable", "deeper/a-not-begun,not begun"], rows.Select(r => string.Join(',', r.Split(',').Take(2))));
        var run = RunStore.Load(new RunFolder(Repository.At("runs", "sample-finished")));
        var pick = run.Judgement.Ranking[run.Judgement.Picks.First!.Value - 1];
        Assert.Contains(FormattableString.Invariant($",{run.Search.Seed},{run.Search.Evaluations},"), rows[0], StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"\"{pick.FullTitle}\",{pick.BuildPrice},{pick.LifeCost},"), rows[0], StringComparison.Ordinal);
        Assert.Contains("--resume", rows[1], StringComparison.Ordinal);
        Assert.Contains("run.json", rows[2], StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_without_runs_is_refused()
    {
        Assert.Equal(ExitCode.BadInput, Cli.Run("gather", folder).Code);
        var (code, _, error) = Cli.Run("gather", Path.Combine(folder, "none"));
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Contains("a folder that holds runs", error, StringComparison.Ordinal);
    }

    private void Copy(string run, params string[] files)
    {
        var to = Directory.CreateDirectory(Path.Combine(folder, run)).FullName;
        foreach (var file in files)
            File.Copy(Repository.At("runs", "sample-finished", file), Path.Combine(to, file));
    }
}
