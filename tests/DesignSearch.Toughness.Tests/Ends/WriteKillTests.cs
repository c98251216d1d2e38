using System.Diagnostics;
using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Killed inside the writing of a file, a search leaves nothing half; apart from the other kills, so that both run at once.</summary>
public sealed class WriteKillTests
{
    private static readonly int Strikes = Longer.Many("DESIGNSEARCH_STRIKES", usual: 2, longer: 6);

    // Killed while a file lies half-written beside its target: each of them in turn, as far as the number of strikes goes.
    [SkippableFact]
    public void Killed_inside_the_writing_of_a_file_it_leaves_nothing_half_and_ends_in_the_same_bytes()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Signals are sent and files watched the way of Linux.");
        using var whole = ShortWinter.Make();
        var written = Watched(whole, strikeAt: int.MaxValue);
        var expected = KillTests.Results(whole.Folder);
        Assert.InRange(written, expected.Count - 2, 3 * expected.Count);
        for (var i = 0; i < Strikes; i++)
        {
            using var run = ShortWinter.Make();
            Watched(run, strikeAt: 1 + i * written / Strikes);
            KillTests.Whole(run.Folder);
            KillTests.Search(run, resume: true).With(0);
            Assert.Equal(expected, KillTests.Results(run.Folder));
        }
    }

    // Counts the files as they begin beside their targets and kills the process at one of them.
    private static int Watched(SmallScenario run, int strikeAt)
    {
        var begun = 0;
        Process? process = null;
        using var watcher = new FileSystemWatcher(run.Folder, "*.designsearch.tmp") { IncludeSubdirectories = true, InternalBufferSize = 65_536 };
        watcher.Created += (_, _) =>
        {
            if (Interlocked.Increment(ref begun) == strikeAt)
                Designsearch.Signal(process!, Designsearch.Kill);
        };
        watcher.EnableRaisingEvents = true;
        using (process = Designsearch.Start([], [], KillTests.Words(run, resume: true)))
        {
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
        }

        // The last files are told of a little after they were written.
        for (var seen = -1; seen != Volatile.Read(ref begun);)
        {
            seen = Volatile.Read(ref begun);
            Thread.Sleep(200);
        }

        return begun;
    }
}
