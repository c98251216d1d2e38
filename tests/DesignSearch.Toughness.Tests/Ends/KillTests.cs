using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Killed at any moment and taken up, a search ends in the bytes of one that nobody disturbed.</summary>
public sealed partial class KillTests
{
    private static readonly int Kills = Longer.Many("DESIGNSEARCH_KILLS", usual: 2, longer: 10);

    [SkippableFact]
    public void Killed_at_random_moments_and_taken_up_it_ends_in_the_same_bytes()
    {
        Skip.If(OperatingSystem.IsWindows(), "Signals are sent the way of Linux and macOS.");
        using var whole = ShortWinter.Make();
        var usual = Timed(whole);
        var expected = Results(whole.Folder);
        var random = new Random(7);
        for (var killed = 0; killed < Kills;)
        {
            using var run = ShortWinter.Make();
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

    /// <summary>Searches in a process of its own and says how long that took.</summary>
    internal static TimeSpan Timed(SmallScenario run)
    {
        var clock = Stopwatch.StartNew();
        Designsearch.Run(Words(run, resume: false)).With(0);
        return clock.Elapsed;
    }

    /// <summary>Searches within this process, which gives the same bytes.</summary>
    internal static Designsearch.Ended Search(SmallScenario run, bool resume = false) => Inside.Run(Words(run, resume));

    internal static string[] Words(SmallScenario run, bool resume) => ["search", run.Folder, "--evaluations", "96", "--quiet", .. resume ? ["--resume"] : Array.Empty<string>()];

    /// <summary>Whatever files there are, each has its end.</summary>
    internal static void Whole(string folder)
    {
        foreach (var (name, end) in new[] { ("report.html", "</html>\n"), ("figures.html", "</html>\n"), ("run.json", "}\n"), ("pareto.svg", "</svg>\n"), ("written.txt", "\n") })
            Assert.True(Path.Combine(folder, name) is var path && (!File.Exists(path) || File.ReadAllText(path).EndsWith(end, StringComparison.Ordinal)), name);
    }

    /// <summary>Every file, by name, with its bytes; of the stored run and the page all but the seconds that a search took.</summary>
    internal static SortedDictionary<string, string> Results(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(
            f => Path.GetRelativePath(folder, f),
            f => Convert.ToHexString(SHA256.HashData(Path.GetFileName(f) is "run.json" or "report.html" or "figures.html" ? Encoding.UTF8.GetBytes(Seconds().Replace(File.ReadAllText(f), "")) : File.ReadAllBytes(f)))),
        StringComparer.Ordinal);

    [GeneratedRegex("\"seconds\": [0-9.]+|[0-9][0-9.,\u00A0]*[ \u00A0]?(s|seconds?)\\b")]
    private static partial Regex Seconds();
}
