using System.CommandLine;
using System.Text.Json;
using DesignSearch.Layouts.Tests;
using DesignSearch.Runs.Store;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

public sealed class CommandTests
{
    [Fact]
    public void Search_writes_every_file_and_prints_one_json_document()
    {
        using var run = new SmallScenario();
        var (code, output, _) = Cli.Run("search", run.Folder, "--evaluations", "300", "--json", "--quiet");
        Assert.Equal(ExitCode.Done, code);
        var document = JsonDocument.Parse(output).RootElement;
        Assert.All(new[] { "seed", "evaluations", "stoppedBecause", "front", "picks" }, name => Assert.True(document.TryGetProperty(name, out _), name));
        Assert.All(document.GetProperty("front").EnumerateArray().First() is var first ? new[] { "buildPrice", "lifeCost", "frostHours", "frostDegreeHoursKh" } : [], name => Assert.True(first.TryGetProperty(name, out _), name));
        Assert.All(new[] { "run.json", "front.csv", "ranking.csv", "pareto.png", "pareto.svg", "report.html", "journal" }, name => Assert.True(new FileInfo(Path.Combine(run.Folder, name)).Length > 100, name));
        var lists = Directory.EnumerateFiles(Path.Combine(run.Folder, "lists")).Select(Path.GetFileName).ToList();
        Assert.Contains(lists, f => f!.StartsWith("1-", StringComparison.Ordinal) && f.EndsWith(".csv", StringComparison.Ordinal));
        Assert.Contains(lists, f => f!.StartsWith("1-", StringComparison.Ordinal) && f.EndsWith(".toml", StringComparison.Ordinal));
        Assert.Equal(ExitCode.BadInput, Cli.Run("search", run.Folder).Code);
        Assert.Equal(ExitCode.Done, Cli.Run("report", run.Folder).Code);
        var (compared, table, _) = Cli.Run("compare", run.Folder);
        Assert.Equal(ExitCode.Done, compared);
        Assert.Contains("Turning or a bigger fixed collector?", table, StringComparison.Ordinal);
        Assert.Contains("Water barrels: with or without?", table, StringComparison.Ordinal);
        Assert.True(JsonDocument.Parse(Cli.Run("compare", run.Folder, "--json").Output).RootElement.GetProperty("comparisons").GetArrayLength() > 4);
        // A run of an earlier format is refused in a sentence, and nothing of it is touched.
        var file = Path.Combine(run.Folder, "run.json");
        File.WriteAllText(file, File.ReadAllText(file).Replace($"\"formatVersion\": {StoredRun.CurrentFormat}", "\"formatVersion\": 1", StringComparison.Ordinal));
        var (old, _, sentence) = Cli.Run("report", run.Folder);
        Assert.Equal(ExitCode.BadInput, old);
        Assert.Contains("search again with this version of the program", sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_that_holds_ends_in_three()
    {
        using var run = new SmallScenario(("heater = [\"none\", \"fan-heater-1kw\", \"fan-heater-2kw\"]", "heater = \"none\""), ("collector = [\"none\", \"flat-plate-2m2\"]", "collector = \"none\""),
            ("start = \"11-01\"", "start = \"12-20\""), ("end = \"03-31\"", "end = \"01-20\""));
        var (code, output, _) = Cli.Run("search", run.Folder, "--quiet");
        Assert.Equal(ExitCode.NothingHolds, code);
        Assert.StartsWith("Nothing within", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_input_ends_in_two_with_a_line_for_each_fault_and_writes_nothing()
    {
        using var run = new SmallScenario(("latitude_deg = 46.3", "latitude_deg = 146.3"), ("budget = 4200", "budgte = 4200"));
        var (code, output, error) = Cli.Run("search", run.Folder);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Empty(output);
        Assert.Contains("scenario.toml:", error, StringComparison.Ordinal);
        Assert.Contains("146.3", error, StringComparison.Ordinal);
        Assert.Contains("did you mean 'budget'", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
        Assert.Equal(["scenario.toml"], Directory.EnumerateFileSystemEntries(run.Folder).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("check", "no-such-run")]
    [InlineData("search", "no-such-run")]
    [InlineData("report", "no-such-run")]
    [InlineData("weather", "no-such-file.csv")]
    [InlineData("parts", "no-such-kind")]
    [InlineData("serach", "x")]
    [InlineData("search", "x", "--evaluations", "1,5")]
    [InlineData("simulate", "x")]
    public void What_is_not_there_or_not_known_ends_in_two(params string[] words)
    {
        var (code, output, error) = Cli.Run(words);
        Assert.Equal(ExitCode.BadInput, code);
        Assert.Empty(output);
        Assert.NotEmpty(error);
    }

    [Fact]
    public void Simulate_prints_the_contract_and_an_hourly_table()
    {
        using var run = new SmallScenario();
        var layout = Path.Combine(run.Folder, "layout.toml");
        var hourly = Path.Combine(run.Folder, "hours.csv");
        File.WriteAllText(layout, "format = 1\n[choices]\nnight_cover = \"aluminised-hand\"\n");
        var (code, output, _) = Cli.Run("simulate", run.Folder, "--layout", layout, "--hourly", hourly, "--json");
        Assert.Equal(ExitCode.Done, code);
        var document = JsonDocument.Parse(output).RootElement;
        Assert.All(new[] { "seasonHours", "frostHours", "frostDegreeHoursKh", "lowestAirC", "standbyKwh", "collectorYieldKwh", "pumpHours", "balanceResidual", "buildPrice", "lifeCost" }, name => Assert.Equal(JsonValueKind.Number, document.GetProperty(name).ValueKind));
        Assert.Equal(3624, document.GetProperty("seasonHours").GetInt32());
        Assert.InRange(document.GetProperty("balanceResidual").GetDouble(), 0, 1e-9);
        // Two winters of 151 days, 30 days of warm-up before each.
        Assert.Equal(2 * (151 + 30) * 24, File.ReadLines(hourly).Count(l => l.StartsWith("typical,", StringComparison.Ordinal) || l.StartsWith("hard,", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_season_without_the_coldest_month_is_doubted_by_check()
    {
        using var small = new Layouts.Tests.SmallScenario(("start = \"11-01\"", "start = \"05-01\""), ("end = \"03-31\"", "end = \"09-30\""));
        Assert.Contains("In doubt: The season counts 1 May to 30 September and leaves out January,", Cli.Run("check", small.Folder).Output, StringComparison.Ordinal);
        Assert.DoesNotContain("In doubt", Cli.Run("check", Repository.At("runs", "sample-finished")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_and_parts_and_help_say_what_they_should()
    {
        Assert.Contains("distinct layouts", Cli.Run("check", Repository.At("runs", "frost-hollow")).Output, StringComparison.Ordinal);
        Assert.Contains("cage-1000-used", Cli.Run("parts", "tank", "--catalog", Repository.At("catalogs", "starter")).Output, StringComparison.Ordinal);
        var all = Cli.Run("--help").Output;
        Assert.Contains("search <RUN> ", all, StringComparison.Ordinal);
        Assert.Contains("parts <KIND> ", all, StringComparison.Ordinal);
        Assert.All(all.Split('\n'), line => Assert.InRange(line.TrimEnd().Length, 0, 110));
        var help = Cli.Run("search", "--help").Output;
        Assert.StartsWith("Examples:", help, StringComparison.Ordinal);
        Assert.Contains("nothing holds the frost limit", help, StringComparison.Ordinal);
    }

    [Fact]
    public void Verbose_says_more_on_the_error_stream_and_nothing_more_on_the_other()
    {
        var run = Repository.At("runs", "sample-finished");
        var (_, plain, brief) = Cli.Run("parts", "tank", "--catalog", Repository.At("catalogs", "starter"));
        var (_, same, more) = Cli.Run("parts", "tank", "--catalog", Repository.At("catalogs", "starter"), "--verbose");
        Assert.Equal(plain, same);
        Assert.True(more.Length > brief.Length);
        Assert.Contains("barrels.csv", Cli.Run("check", run, "-v").Error, StringComparison.Ordinal);
        Assert.Empty(Cli.Run("check", run, "--quiet").Error);
        Assert.Equal(ExitCode.BadInput, Cli.Run("check", run, "--quiet", "--verbose").Code);
    }

    [Fact]
    public void Every_command_says_at_once_what_it_begins_with()
    {
        foreach (var words in new[] { new[] { "check", "no-such-run" }, ["search", "no-such-run"], ["report", "no-such-run"], ["weather", "no-such-file.csv"], ["parts", "no-such-kind"], ["simulate", "no-such-run", "--layout", "x.toml"] })
            Assert.StartsWith("Reading ", Cli.Run(words).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("designsearch se", "search")]
    [InlineData("designsearch search --se", "--seed")]
    [InlineData("designsearch parts tank-", "tank-jacket")]
    [InlineData("designsearch completions po", "powershell")]
    [InlineData("designsearch weather --a", "--at")]
    [InlineData("designsearch weather --n", "--near")]
    [InlineData("designsearch weather --", "--years")]
    public void The_program_says_what_fits_at_the_cursor(string line, string fits) =>
        Assert.Contains(fits, Cli.Run($"[suggest:{line.Length}]", line).Output.Split('\n', StringSplitOptions.TrimEntries));
}
