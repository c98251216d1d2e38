using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>A write that fails, or a terminal that closes, at any moment: a sentence, nothing half-written, and the same bytes once it is taken up.</summary>
public sealed class FaultyWritingTests
{
    private static readonly int Faults = Longer.Many("DESIGNSEARCH_FAULTS", usual: 2, longer: 6);
    private static readonly int HangUps = Longer.Many("DESIGNSEARCH_HANGUPS", usual: 2, longer: 6);

    // A limit on the size of files lets the writing of the larger ones fail: the limits go from the smallest file's size to the largest's, so that each meets one.
    [SkippableFact]
    public void A_write_that_fails_leaves_nothing_half_and_the_search_is_taken_up()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "The limit is set the way of Linux.");
        using var whole = ShortWinter.Make();
        KillTests.Search(whole).With(0);
        var expected = KillTests.Results(whole.Folder);
        var sizes = Directory.EnumerateFiles(whole.Folder, "*", SearchOption.AllDirectories).Select(f => new FileInfo(f).Length).Order().ToList();
        var most = sizes[^1] / 1024;
        for (var i = 0; i < Faults; i++)
        {
            using var run = ShortWinter.Make();
            var kilobytes = (int)Math.Pow(most, (i + 1.0) / (Faults + 1));
            string[] launcher = ["/bin/bash", "-c", FormattableString.Invariant($"ulimit -f {kilobytes}; exec \"$@\""), "bash"];
            var ended = Designsearch.RunIn(launcher, [("DOTNET_EnableWriteXorExecute", "0")], KillTests.Words(run, resume: false)).With(4);
            Assert.Contains("would become larger", Assert.Single(ended.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
            Assert.Empty(Directory.EnumerateFiles(run.Folder, "*.tmp", SearchOption.AllDirectories));
            KillTests.Whole(run.Folder);
            KillTests.Search(run, resume: true).With(0);
            Assert.Equal(expected, KillTests.Results(run.Folder));
        }
    }

    [SkippableFact]
    public void A_terminal_that_closes_at_any_moment_costs_nothing()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Signals are sent the way of Linux.");
        using var whole = ShortWinter.Make();
        var usual = KillTests.Timed(whole).TotalMilliseconds;
        var expected = KillTests.Results(whole.Folder);
        var random = new Random(11);
        for (var i = 0; i < HangUps; i++)
        {
            using var run = ShortWinter.Make();
            var process = Designsearch.Start(Designsearch.Answering, [], KillTests.Words(run, resume: true));
            if (!process.WaitForExit(TimeSpan.FromMilliseconds(400 + random.NextDouble() * usual)))
                Designsearch.Signal(process, Designsearch.HangUp);
            // Before the program answers to signals the system ends it; afterwards it ends by itself, or has ended.
            var ended = Designsearch.Wait(process);
            Assert.True(ended.Code is 129 or 0, $"{ended.Code}: {ended.Error}");
            Assert.DoesNotContain("   at ", ended.Error, StringComparison.Ordinal);
            Assert.Empty(Directory.EnumerateFiles(run.Folder, "*.tmp", SearchOption.AllDirectories));
            KillTests.Whole(run.Folder);
            KillTests.Search(run, resume: true).With(0);
            Assert.Equal(expected, KillTests.Results(run.Folder));
        }
    }
}
