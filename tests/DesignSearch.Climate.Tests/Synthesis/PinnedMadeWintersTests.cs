using System.Globalization;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>
/// Winters made for three sites, typical, hard and drawn, as they were when they were last looked at. Whoever changes how they are made renews them all; whoever did not mean to
/// learns it here.
/// </summary>
public sealed class PinnedMadeWintersTests
{
    private static readonly string[] Digests =
    [
        "chile 8f4c122c", "redmond 3b9755e9", "greensboro cece7b16",
    ];

    [SkippableFact]
    public void Pinned_winters_that_are_made()
    {
        Skip.IfNot(OperatingSystem.IsLinux() && RuntimeInformation.ProcessArchitecture == Architecture.X64, "Sine and cosine may differ in the last bit on another system.");
        var texts = new[] { ReferenceSites.Chile, ReferenceSites.Redmond, ReferenceSites.Greensboro }.AsParallel().AsOrdered().Select(c => (c.Place.Name, Text: Told(c))).ToList();
        var digests = texts.Select(t => t.Name + " " + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(t.Text)))[..8]).ToList();
        if (Digests.SequenceEqual(digests))
            return;
        var folder = Directory.CreateTempSubdirectory("designsearch-pinned-").FullName;
        foreach (var (name, text) in texts)
            File.WriteAllText(Path.Combine(folder, name + ".txt"), text);
        Assert.Fail($"moved: {string.Join("; ", digests.Except(Digests))}. The texts are in {folder}. Now they are \"{string.Join("\", \"", digests)}\"");
    }

    private static string Told(MonthlyClimate climate)
    {
        var season = ReferenceSites.SeasonOf(climate);
        var bare = climate with { Months = [.. climate.Months.Select(m => m with { DailyLowSdK = null, DailyMeanSdK = null })], Character = null };
        var typical = WinterMaker.Synthetic(climate, season, WinterKind.Typical, 4, new());
        Winter[] winters =
        [
            typical, WinterMaker.Synthetic(bare, season, WinterKind.Typical, 5, new()), WinterMaker.Synthetic(climate, season, WinterKind.Hard, 4, new() { PowerCutHours = 6 }),
            WinterMaker.Synthetic(bare, season, WinterKind.Hard, 4, new() { HardReturnYears = 25, Known = new(-19.5, 40), YearlyLowestSdK = 4 }),
            WinterMaker.Harden([typical], new() { HardReturnYears = 5 }), .. WinterMaker.Drawn([typical], 2, 8, new()), .. WinterMaker.Drawn(bare, season, 2, 9, new() { Known = new(-15, 10) }),
        ];
        var told = new StringBuilder();
        foreach (var winter in winters)
        {
            told.Append(CultureInfo.InvariantCulture, $"{winter.Name} {winter.Kind} {winter.Start:u} {winter.WarmUpHours} {winter.StressWeek} {string.Join(' ', winter.PowerCuts)} {winter.Ground} {string.Join(' ', winter.Remarks)}\n");
            foreach (var hours in new[] { winter.AirC, winter.DewPointC, winter.WindMPerS, winter.GlobalWPerM2, winter.DiffuseWPerM2, winter.BeamNormalWPerM2, winter.SkyC })
                told.AppendJoin(' ', hours.Where((_, h) => h % 5 == 0).Select(x => (Math.Abs(x) < 1e-9 ? 0 : x).ToString("G7", CultureInfo.InvariantCulture))).Append('\n');
        }

        return told.ToString();
    }
}
