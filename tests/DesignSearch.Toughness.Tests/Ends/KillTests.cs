using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using DesignSearch.Layouts.Tests;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Killed at any moment and taken up, a search ends in the bytes of one that nobody disturbed.</summary>
public sealed partial class KillTests
{
    private static readonly int Kills = Longer.Many("DESIGNSEARCH_KILLS", usual: 6, longer: 30);
    private static readonly int Strikes = Longer.Many("DESIGNSEARCH_STRIKES", usual: 4, longer: 16);

    [SkippableFact]
    public void Killed_at_random_moments_and_taken_up_it_ends_in_the_same_bytes()
    {
        Skip.If(OperatingSystem.IsWindows(), "Signals are sent the way of Linux and macOS.");
        using var whole = new SmallScenario();
        var clock = Stopwatch.StartNew();
        Search(whole).With(0);
        var usual = clock.Elapsed;
        var expected = Results(whole.Folder);
        var random = new Random(7);
        for (var killed = 0; killed < Kills;)
        {
            using var run = new SmallScenario();
            var ended = false;
            while (!ended && killed < Kills)
            {
                using var process = Designsearch.Start([], [], Words(run, resume: true));
                ended = process.WaitForExit(TimeSpan.FromMilliseconds(60 + random.NextDouble() * usual.TotalMilliseconds));
                if (ended)
                    break;
                Designsearch.Signal(process, Designsearch.Kill);
                process.WaitForExit();
                killed++;
                // Now and then the next one is killed too, and the one after.
                if (random.Next(3) > 0)
                    break;
            }

            Search(run, resume: true).With(0);
            Assert.Equal(expected, Results(run.Folder));
        }
    }

    // Killed while a file lies half-written beside its target: each of them in turn, as far as the number of strikes goes.
    [SkippableFact]
    public void Killed_inside_the_writing_of_a_file_it_leaves_nothing_half_and_ends_in_the_same_bytes()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Signals are sent and files watched the way of Linux.");
        using var whole = new SmallScenario();
        var written = Watched(whole, strikeAt: int.MaxValue);
        var expected = Results(whole.Folder);
        Assert.InRange(written, expected.Count - 2, 3 * expected.Count);
        for (var i = 0; i < Strikes; i++)
        {
            using var run = new SmallScenario();
            Watched(run, strikeAt: 1 + i * written / Strikes);
            foreach (var (name, end) in new[] { ("report.html", "</html>\n"), ("run.json", "}\n"), ("pareto.svg", "</svg>\n"), ("written.txt", "\n") })
                Assert.True(Path.Combine(run.Folder, name) is var path && (!File.Exists(path) || File.ReadAllText(path).EndsWith(end, StringComparison.Ordinal)), name);
            Search(run, resume: true).With(0);
            Assert.Equal(expected, Results(run.Folder));
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
        using (process = Designsearch.Start([], [], Words(run, resume: true)))
        {
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
        }

        return begun;
    }

    private static Designsearch.Ended Search(SmallScenario run, bool resume = false) => Designsearch.Run(Words(run, resume));

    private static string[] Words(SmallScenario run, bool resume) => ["search", run.Folder, "--evaluations", "96", "--quiet", .. resume ? ["--resume"] : Array.Empty<string>()];

    /// <summary>Every file, by name, with its bytes; of the stored run and the page all but the seconds that a search took.</summary>
    internal static SortedDictionary<string, string> Results(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(
            f => Path.GetRelativePath(folder, f),
            f => Convert.ToHexString(SHA256.HashData(Path.GetFileName(f) is "run.json" or "report.html" ? Encoding.UTF8.GetBytes(Seconds().Replace(File.ReadAllText(f), "")) : File.ReadAllBytes(f)))),
        StringComparer.Ordinal);

    [GeneratedRegex("\"seconds\": [0-9.]+|[0-9][0-9.,\u00A0]*[ \u00A0]?(s|seconds?)\\b")]
    private static partial Regex Seconds();
}
