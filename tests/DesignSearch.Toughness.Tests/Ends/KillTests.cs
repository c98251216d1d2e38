using System.Diagnostics;
using DesignSearch.Layouts.Tests;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Killed at any moment and taken up, a search ends in the bytes of one that nobody disturbed.</summary>
public sealed class KillTests
{
    private static readonly int Kills = int.TryParse(Environment.GetEnvironmentVariable("DESIGNSEARCH_KILLS"), out var n) ? n : 30;

    [SkippableFact]
    public void Killed_at_random_moments_and_taken_up_it_ends_in_the_same_bytes()
    {
        Skip.If(OperatingSystem.IsWindows(), "Signals are sent the way of Linux and macOS.");
        using var whole = new SmallScenario();
        var clock = Stopwatch.StartNew();
        Search(whole).With(0);
        var usual = clock.Elapsed;
        var expected = Results(whole);
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
            Assert.Equal(expected, Results(run));
        }
    }

    private static Designsearch.Ended Search(SmallScenario run, bool resume = false) => Designsearch.Run(Words(run, resume));

    private static string[] Words(SmallScenario run, bool resume) => ["search", run.Folder, "--evaluations", "96", "--quiet", .. resume ? ["--resume"] : Array.Empty<string>()];

    // Every file, by name, with its bytes; run.json and the page tell the seconds, so they are only there.
    private static SortedDictionary<string, string> Results(SmallScenario run) => new(
        Directory.EnumerateFiles(run.Folder, "*", SearchOption.AllDirectories).ToDictionary(
            f => Path.GetRelativePath(run.Folder, f),
            f => Path.GetFileName(f) is "run.json" or "report.html" ? "" : Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f)))),
        StringComparer.Ordinal);
}
