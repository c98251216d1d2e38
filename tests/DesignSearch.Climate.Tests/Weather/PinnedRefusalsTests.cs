using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>
/// What is told of the first rows of each format, spoilt in a score of ways: every fault with its line, its column, its value and what was expected, as it was when it was
/// last looked at. After a change that was meant, read what the test wrote and put the digests in.
/// </summary>
public sealed class PinnedRefusalsTests
{
    private const int Rows = 90;

    private static readonly string[] Digests =
    [
        "plain 55ea83ee", "tmy3 d7238645", "pvgis 44aad42a", "pvgis hours ffbb6af1", "nsrdb f42453a1", "half hours 97f700c2", "nasa 46c62d1e", "era5 56fe24dc",
        "isd-lite d3632a9e", "global hourly 082e8766", "days bf045508", "json bce3a654",
    ];

    private static readonly (string Name, Func<string[], IEnumerable<string>> Do)[] Slips =
    [
        ("latitude too far", l => Head(l, x => x.Replace("-44.2", "-144.2", StringComparison.Ordinal))),
        ("latitude in words", l => Head(l, x => x.Replace("-44.2", "south", StringComparison.Ordinal))),
        ("longitude too far", l => Head(l, x => x.Replace("169.8", "199.8", StringComparison.Ordinal))),
        ("a height above all", l => Head(l, x => x.Replace("420", "9420", StringComparison.Ordinal))),
        ("a zone of no place", l => Head(l, x => Regex.Replace(x, @"(?<![\d.])11(\.0)?(?![\d.])", "15"))),
        ("no head", l => l.SkipWhile(x => x.Length > 0 && !char.IsAsciiDigit(x[0]))),
        ("names lost", l => Head(l, x => x.Replace("T2m", "heat", StringComparison.Ordinal).Replace("Dry-bulb", "heat", StringComparison.Ordinal).Replace("Temperature", "heat", StringComparison.Ordinal).Replace("temperature", "heat", StringComparison.Ordinal).Replace("air", "heat", StringComparison.Ordinal))),
        ("light lost", l => Head(l, x => x.Replace("GHI", "sun", StringComparison.Ordinal).Replace("G(h)", "sun", StringComparison.Ordinal).Replace("shortwave", "sun", StringComparison.Ordinal))),
        ("a unit of its own", l => Head(l, x => x.Replace("(C)", "(furlong)", StringComparison.Ordinal).Replace("°C", "furlong", StringComparison.Ordinal).Replace("(W/m^2)", "(lux)", StringComparison.Ordinal))),
        ("cut within a row", l => At(l, 70, x => x[..(x.Length / 3)])),
        ("a stamp in words", l => At(l, 70, x => "yesterday" + x[Math.Min(x.Length, 9)..])),
        ("a month too many", l => At(l, 70, x => Regex.Replace(x, @"(0[1-9]|1[0-2])", "13"))),
        ("more fields than names", l => At(l, 70, x => x + ",1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,17,18,19,20")),
        ("words for figures", l => l.Select((x, i) => i > 40 ? Regex.Replace(x, @"(?<=[,; ])-?\d+\.\d+", "cold") : x)),
        ("a zone on some", l => At(l, 70, x => Regex.Replace(x, @"(\d\d:\d\d)", "$1Z"))),
        ("every row twice", l => l.SelectMany((x, i) => i > 40 ? [x, x] : new[] { x })),
        ("one row", l => l.Take(1 + Array.FindIndex(l, x => x.Length > 12 && char.IsAsciiDigit(x[0]) && char.IsAsciiDigit(x[1])))),
        ("another station", l => At(l, 70, x => "9" + x)),
        ("another year", l => At(l, 70, x => Regex.Replace(x, @"(19|20)\d\d", "1802"))),
        ("cold as space", l => l.Select((x, i) => i > 40 ? Regex.Replace(x, @"(?<=[,; ])(\d)(?=[\d.]*[,; ])", "9$1") : x)),
    ];

    [SkippableFact]
    public void Pinned_what_is_told_of_the_first_rows_of_each_format()
    {
        Skip.IfNot(OperatingSystem.IsLinux() && RuntimeInformation.ProcessArchitecture == Architecture.X64, "Sine and cosine may differ in the last bit on another system.");
        var texts = PinnedReadingTests.Formats.AsParallel().AsOrdered().Select(f => (f.Name, Text: string.Concat(Slips.Select(s => $"{s.Name}: {Told(s.Do([.. f.Text.Split('\n').Take(Rows)]))}\n")))).ToList();
        var digests = texts.Select(t => t.Name + " " + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(t.Text)))[..8]).ToList();
        if (Digests.SequenceEqual(digests))
            return;
        var folder = Directory.CreateTempSubdirectory("designsearch-pinned-").FullName;
        foreach (var (name, text) in texts)
            File.WriteAllText(Path.Combine(folder, name.Replace(' ', '-') + ".txt"), text);
        Assert.Fail($"moved: {string.Join("; ", digests.Except(Digests))}. The texts are in {folder}. Now they are \"{string.Join("\", \"", digests)}\"");
    }

    // Of what is read all the same only that it is, for some of it hangs on winters made here.
    private static string Told(IEnumerable<string> lines) => PinnedReadingTests.Told(string.Join('\n', lines)) is var told && told.StartsWith("made.csv", StringComparison.Ordinal) ? "read" : told;

    private static IEnumerable<string> Head(string[] lines, Func<string, string> change) => lines.Select((l, i) => i < 40 && !(l.Length > 1 && char.IsAsciiDigit(l[0]) && char.IsAsciiDigit(l[1]) && i > 2) ? change(l) : l);

    private static IEnumerable<string> At(string[] lines, int line, Func<string, string> change) => lines.Select((l, i) => i == Math.Min(line, lines.Length - 2) ? change(l) : l);
}
