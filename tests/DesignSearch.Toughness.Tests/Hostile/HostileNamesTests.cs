using System.IO.Compression;
using System.Text.Json;
using System.Text.RegularExpressions;
using DesignSearch.Files;
using DesignSearch.Layouts.Tests;
using DesignSearch.Reporting.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Names that try to break out, through the whole program: shown as text, kept inside the run folder, harmless in a spreadsheet.</summary>
public sealed partial class HostileNamesTests
{
    public static TheoryData<string> Names => new("<script>alert(1)</script>", "\"'><img src=x onerror=alert(1)>", "=1+1", "+cmd|' /C calc'!A0", "@SUM(A1)", "../../x", "..\\..\\x", "abc\u202Egpj\u200Fexe", "a\tb & c; d|e",
        "x\u001b[2J\u001b]0;owned\u0007", "bell\u0007", "one\u009B31mtwo", "isolate\u2066x\u2069", "zero\u200Bwidth\uFEFF", "two\nlines", "back\rover", "line\u2028end", "joined\u200Dx", "$(reboot)", "`id`; rm x", "100%s%n");

    [Theory]
    [MemberData(nameof(Names))]
    public void A_name_stays_a_name(string name)
    {
        using var run = With(name, name);
        // The one that a terminal would obey goes through a process of its own, whose streams a person meets; the others through the same commands in this one.
        Func<string[], Designsearch.Ended> start = name.Contains("\u001b]0;", StringComparison.Ordinal) ? Designsearch.Run : Inside.Run;
        var ended = start(["search", run.Folder, "--evaluations", "32", "--quiet"]).With(0);
        IsHarmless("search", ended.Output + ended.Error);
        var layout = Directory.EnumerateFiles(Path.Combine(run.Folder, "lists"), "1-*.toml").Single();
        string[][] commands =
        [
            ["check", run.Folder, "--verbose"], ["simulate", run.Folder, "--layout", layout], ["simulate", run.Folder, "--layouts", Path.Combine(run.Folder, "lists")],
            ["simulate", run.Folder, "--layout", layout, "--json"], ["parts", "--catalog", Path.Combine(run.Folder, "catalogue")], ["report", run.Folder],
            ["compare", run.Folder], ["compare", run.Folder, "--json"],
        ];
        // The plainer ones go through every command on the build machine only.
        foreach (var words in Longer.IsOn || name.Any(char.IsControl) ? commands : [])
        {
            var said = start(words).With(0);
            IsHarmless(words[0], said.Output + said.Error);
            if (words[^1] == "--json")
                JsonDocument.Parse(said.Output).Dispose();
        }

        foreach (var file in Directory.EnumerateFiles(run.Folder, "*", SearchOption.AllDirectories).Where(f => Path.GetExtension(f) is ".csv" or ".svg" or ".html" && !f.Contains("catalogue", StringComparison.Ordinal)))
            IsHarmless(file, File.ReadAllText(file));
        using var stored = JsonDocument.Parse(File.ReadAllText(Path.Combine(run.Folder, "run.json")));
        Assert.Equal(name, stored.RootElement.GetProperty("scenario").GetProperty("name").GetString());
        var page = File.ReadAllText(Path.Combine(run.Folder, "report.html"));
        Assert.DoesNotContain("<script>alert", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<img", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", File.ReadAllText(Path.Combine(run.Folder, "pareto.svg")), StringComparison.Ordinal);
        // In the workbook every cell is text or a number, and none a formula.
        using (var book = ZipFile.OpenRead(Path.Combine(run.Folder, "lists.xlsx")))
        {
            foreach (var entry in book.Entries)
            {
                using var reader = new StreamReader(entry.Open());
                var text = reader.ReadToEnd();
                IsHarmless(entry.FullName, text);
                Assert.DoesNotContain("<x:f>", text, StringComparison.Ordinal);
                Assert.DoesNotContain("<f>", text, StringComparison.Ordinal);
            }
        }

        // Everything new lies in the run folder, and nothing in it has a strange name.
        Assert.Equal(["catalogue", "figures.html", "journal", "lists", "lists.xlsx", "pareto.png", "pareto.svg", "ranking.csv", "report.html", "run.json", "scenario.toml", "written.txt", "front.csv"], Directory.EnumerateFileSystemEntries(run.Folder).Select(f => Path.GetFileName(f)).OrderBy(f => f == "front.csv" ? 1 : 0).ThenBy(f => f, StringComparer.Ordinal));
        Assert.All(Directory.EnumerateFiles(Path.Combine(run.Folder, "lists")).Select(f => Path.GetFileName(f)), f => Assert.Matches("^[0-9]+-[a-z0-9-]+\\.(csv|toml|svg)$", f));
        Assert.All(Directory.EnumerateFiles(Path.Combine(run.Folder, "lists"), "*.svg").Select(File.ReadAllText), s => Assert.True(!s.Contains("<script", StringComparison.Ordinal) && !s.Contains("<img", StringComparison.Ordinal), s));
        foreach (var table in Directory.EnumerateFiles(run.Folder, "*.csv").Concat(Directory.EnumerateFiles(Path.Combine(run.Folder, "lists"), "*.csv")))
        {
            foreach (var cell in CsvRows.Of(File.ReadAllText(table)).SelectMany(r => r.Values))
                Assert.True(cell.Length == 0 || (!"=+@\t\r".Contains(cell[0]) && (cell[0] != '-' || double.TryParse(cell, out _))), $"{table}: {cell}");
        }
    }

    // No letter that a terminal obeys or that turns the direction of reading, but for the ends of lines.
    private static void IsHarmless(string where, string text)
    {
        foreach (var rune in text.EnumerateRunes())
            Assert.False(rune.Value is not ('\n' or '\r' or '\t') && VisibleText.IsHidden(rune), $"U+{rune.Value:X4} in {where}");
    }

    [Theory]
    [InlineData(10_000, 'w')]
    [InlineData(5, '\0')]
    public void A_name_that_is_none_is_refused_with_its_place(int length, char letter)
    {
        using var run = With(new string(letter, length), "Barrel");
        var scenario = Inside.Run("search", run.Folder, "--quiet").With(2);
        Assert.Contains("scenario.toml:3:", scenario.Error, StringComparison.Ordinal);
        Assert.All(scenario.Error.Split('\n'), l => Assert.InRange(l.Length, 0, 600));
        using var other = With("House", new string(letter, length));
        var catalogue = Inside.Run("search", other.Folder, "--quiet").With(2);
        Assert.Contains("barrels.csv:", catalogue.Error, StringComparison.Ordinal);
        Assert.DoesNotContain('\0', scenario.Error + catalogue.Error);
    }

    // The sample with a name of its own, and a catalogue of its own in which every name of a barrel is hostile.
    private static SmallScenario With(string scenarioName, string partName)
    {
        var run = ShortWinter.Make();
        var catalogue = Directory.CreateDirectory(Path.Combine(run.Folder, "catalogue")).FullName;
        foreach (var file in Directory.EnumerateFiles(Repository.At("catalogs", "starter"), "*.csv"))
            File.Copy(file, Path.Combine(catalogue, Path.GetFileName(file)));
        var barrels = Path.Combine(catalogue, "barrels.csv");
        File.WriteAllLines(barrels, File.ReadAllLines(barrels).Select(l => l.StartsWith('#') || l.StartsWith("id,", StringComparison.Ordinal) ? l : Renamed(l, partName)));
        var scenario = Path.Combine(run.Folder, "scenario.toml");
        File.WriteAllLines(scenario, File.ReadAllLines(scenario).Select(l =>
            l.StartsWith("name = \"", StringComparison.Ordinal) && !l.Contains("typical", StringComparison.Ordinal) && !l.Contains("hard", StringComparison.Ordinal) ? "name = " + Quoted(scenarioName)
            : l.StartsWith("catalogs = ", StringComparison.Ordinal) ? "catalogs = [\"catalogue\"]"
            : l.StartsWith("place = ", StringComparison.Ordinal) ? "place = " + Quoted(scenarioName.Length < 100 ? scenarioName : "x")
            : l.StartsWith("currency = ", StringComparison.Ordinal) ? "currency = " + Quoted(scenarioName.Length < 16 ? scenarioName : "crowns") : l));
        return run;
    }

    private static string Quoted(string text) => text.Contains('\0') ? '"' + text + '"' : JsonSerializer.Serialize(text);

    private static string Renamed(string row, string name) => NameCell().Replace(row, m => m.Groups["id"].Value + ",\"" + name.Replace("\"", "\"\"", StringComparison.Ordinal) + "\",", 1);

    [GeneratedRegex("^(?<id>[^,]*),(\"([^\"]|\"\")*\"|[^,]*),")]
    private static partial Regex NameCell();
}
