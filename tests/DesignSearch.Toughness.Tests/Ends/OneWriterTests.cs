using System.Diagnostics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Two processes never write into one folder: the second is told who is there and how to go on, and the first ends as if alone.</summary>
public sealed class OneWriterTests
{
    private static readonly int Pairs = Longer.Many("DESIGNSEARCH_PAIRS", usual: 2, longer: 4);

    [SkippableFact]
    public void A_second_writer_beside_a_running_search_is_refused_and_the_first_is_not_disturbed()
    {
        Skip.If(OperatingSystem.IsWindows(), "The first is held the way of Linux and macOS.");
        using var run = ShortWinter.Make();
        string[] words = ["--evaluations", "64", "--quiet"];
        Inside.Run(["search", run.Folder, .. words]).With(0);
        var expected = KillTests.Results(run.Folder);

        var first = Designsearch.Start([], [], ["search", run.Folder, "--force", .. words]);
        var id = first.Id;
        Assert.True(SpinWait.SpinUntil(() => File.Exists(Path.Combine(run.Folder, "searching.txt")) || first.HasExited, TimeSpan.FromSeconds(60)));
        Designsearch.Signal(first, Designsearch.Hold);
        string[][] tried = [["search", "--force"], ["search", "--force", "--seed", "9"], ["search", "--resume"], ["search"], ["report"]];
        var seconds = tried.Select(t => Inside.Run([t[0], run.Folder, .. t[1..], "--quiet"])).ToList();
        Designsearch.Signal(first, Designsearch.GoOn);
        Designsearch.Wait(first).With(0);
        Assert.All(seconds, second =>
        {
            second.With(4);
            Assert.Contains($"process {id} on ", second.Error, StringComparison.Ordinal);
            Assert.Contains("copy scenario.toml into a folder of its own", second.Error, StringComparison.Ordinal);
            Assert.Empty(second.Output);
        });
        Assert.Equal(expected, KillTests.Results(run.Folder));
    }

    [Fact]
    public void Of_two_searches_begun_at_the_same_moment_one_ends_and_the_other_is_told()
    {
        using var alone = ShortWinter.Make();
        Inside.Run("search", alone.Folder, "--evaluations", "64", "--quiet").With(0);
        var expected = KillTests.Results(alone.Folder);
        for (var pair = 0; pair < Pairs; pair++)
        {
            using var run = ShortWinter.Make();
            string[] words = ["search", run.Folder, "--evaluations", "64", "--quiet", .. pair % 2 == 0 ? ["--force"] : Array.Empty<string>()];
            Process[] both = [Designsearch.Start([], [], words), Designsearch.Start([], [], words)];
            var ended = both.Select(Designsearch.Wait).ToList();
            // One may have ended before the other began: then the folder is finished, or is searched anew by force.
            Assert.Contains(ended, e => e.Code == 0);
            Assert.All(ended, e => Assert.True(e.Code is 0 or 4 or 2, $"{e.Code}: {e.Error}"));
            Assert.All(ended.Where(e => e.Code == 4), e => Assert.Contains("under way", e.Error, StringComparison.Ordinal));
            Assert.All(ended.Where(e => e.Code == 2), e => Assert.Matches("finished|broken off", e.Error));
            Assert.Equal(expected, KillTests.Results(run.Folder));
        }
    }

    [SkippableFact]
    public void After_a_search_by_force_was_killed_the_way_on_is_named_and_old_results_say_that_they_are_old()
    {
        Skip.If(OperatingSystem.IsWindows(), "Signals are sent the way of Linux and macOS.");
        using var run = ShortWinter.Make();
        Inside.Run("search", run.Folder, "--evaluations", "64", "--quiet").With(0);
        var old = File.ReadAllText(Path.Combine(run.Folder, "run.json"));
        using var killed = Designsearch.Start([], [], "search", run.Folder, "--force", "--evaluations", "96", "--quiet");
        Assert.True(SpinWait.SpinUntil(() => File.Exists(Path.Combine(run.Folder, "searching.txt")), TimeSpan.FromSeconds(60)));
        Designsearch.Signal(killed, Designsearch.Kill);
        killed.WaitForExit();
        Assert.Equal(old, File.ReadAllText(Path.Combine(run.Folder, "run.json")));
        Assert.Contains("broken off here. Use --resume", Inside.Run("search", run.Folder, "--quiet").With(2).Error, StringComparison.Ordinal);
        foreach (var command in new[] { "report", "compare" })
            Assert.Contains("result from before. 'search --resume'", Inside.Run(command, run.Folder, "--quiet").With(0).Error, StringComparison.Ordinal);
        Inside.Run("search", run.Folder, "--resume", "--evaluations", "96", "--quiet").With(0);
        Assert.False(File.Exists(Path.Combine(run.Folder, "searching.txt")));
        Assert.Empty(Inside.Run("report", run.Folder, "--quiet").With(0).Error);
    }

    [Fact]
    public void Results_of_inputs_that_have_changed_since_say_so()
    {
        using var run = ShortWinter.Make();
        Inside.Run("search", run.Folder, "--evaluations", "64", "--quiet").With(0);
        File.AppendAllText(Path.Combine(run.Folder, "scenario.toml"), "# a word\n");
        foreach (var command in new[] { "report", "compare" })
            Assert.Contains("'scenario.toml' changed", Inside.Run(command, run.Folder, "--quiet").With(0).Error, StringComparison.Ordinal);
    }
}
