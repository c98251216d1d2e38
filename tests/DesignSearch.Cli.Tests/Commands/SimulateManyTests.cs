using System.Globalization;
using System.Text.Json;
using DesignSearch.Climate.Tests;
using DesignSearch.Layouts.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>Many layouts in one process: the figures of each are those of <c>simulate</c> for it alone, however they are given.</summary>
public sealed class SimulateManyTests
{
    private static readonly string Sample = Repository.At("runs", "sample-finished");

    [Fact]
    public void A_folder_gives_what_each_file_gives_alone()
    {
        var lists = Path.Combine(Sample, "lists");
        var files = Directory.EnumerateFiles(lists, "*.toml").Order(StringComparer.Ordinal).ToList();
        var rows = Lines(Cli.Run("simulate", Sample, "--layouts", lists, "--json"));
        Assert.Equal(files.Select(Path.GetFileNameWithoutExtension), rows.Select(r => r.GetProperty("name").GetString()));
        foreach (var (file, row) in files.Zip(rows).Where((_, i) => i % 5 == 0))
        {
            var alone = JsonDocument.Parse(Cli.Run("simulate", Sample, "--layout", file, "--json").Output).RootElement;
            foreach (var figure in new[] { "buildPrice", "lifeCost", "score", "frostHours", "worstFrostHours", "frostDegreeHoursKh", "lowestAirC", "standbyKwh", "collectorYieldKwh", "pumpHours" })
                Assert.Equal(alone.GetProperty(figure).GetRawText(), row.GetProperty(figure).GetRawText());
            Assert.Equal(alone.GetProperty("holds").GetBoolean(), row.GetProperty("holds").GetBoolean());
            Assert.Equal(
                alone.GetProperty("checks").EnumerateArray().Where(c => !c.GetProperty("passed").GetBoolean()).Select(c => c.GetProperty("id").GetString()),
                row.GetProperty("fails").EnumerateArray().Select(c => c.GetString()));
        }
    }

    [Fact]
    public void A_table_a_file_and_standard_input_agree_and_many_rows_keep_their_order()
    {
        using var run = new SmallScenario();
        var text = "name,heater,heater_set_c,barrel,barrel_count,night_cover\n"
            + string.Concat(Enumerable.Range(0, 150).Select(i => FormattableString.Invariant($"no {i},{(i % 3 == 0 ? "" : "fan-heater-2kw")},{(i % 3 == 0 ? "" : 3 + (i % 2))},{(i % 5 == 0 ? "none" : "barrel-200-used")},{(i % 5 == 0 ? "" : i % 5)},aluminised-hand\n")));
        var file = Path.Combine(run.Folder, "many.csv");
        File.WriteAllText(file, text);
        var (code, table, _) = Cli.Run("simulate", run.Folder, "--layouts", file, "--quiet");
        Assert.Equal((0, table), (code, Cli.RunOn(text, "simulate", run.Folder, "--layouts", "-", "--quiet").Output));
        var rows = table.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("name,weather,holds,fails,build_price,", rows[0], StringComparison.Ordinal);
        Assert.Equal(Enumerable.Range(0, 150).Select(i => FormattableString.Invariant($"no {i}")), rows.Skip(1).Select(r => r.Split(',')[0]));
        // A row of the table and the layout file that says the same.
        var layout = Path.Combine(run.Folder, "layout.toml");
        File.WriteAllText(layout, "format = 1\n[choices]\nheater = \"fan-heater-2kw\"\nheater_set_c = 4\nbarrel = \"barrel-200-used\"\nbarrel_count = 2\nnight_cover = \"aluminised-hand\"\n");
        var alone = JsonDocument.Parse(Cli.Run("simulate", run.Folder, "--layout", layout, "--json").Output).RootElement;
        var cells = rows[1 + 7].Split(',');
        Assert.Equal(alone.GetProperty("buildPrice").GetDecimal(), decimal.Parse(cells[4], CultureInfo.InvariantCulture));
        Assert.Equal(alone.GetProperty("frostDegreeHoursKh").GetDouble(), double.Parse(cells[9], CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Every_weather_has_its_rows()
    {
        using var run = new SmallScenario(("elevation_m = 640", "elevation_m = 420"));
        var sky = new MadeSky(46.3, 13.9, 1);
        var (one, two) = (Path.Combine(run.Folder, "one.csv"), Path.Combine(run.Folder, "two.csv"));
        File.WriteAllText(one, sky.PvgisTypical(means: true, 0));
        File.WriteAllText(two, sky.Tmy3());
        const string text = "heater,heater_set_c\nnone,\nfan-heater-2kw,4\n";
        var rows = Lines(Cli.RunOn(text, "simulate", run.Folder, "--layouts", "-", "--weathers", one, two, "--json"));
        Assert.Equal([(one, "1"), (one, "2"), (two, "1"), (two, "2")], rows.Select(r => (r.GetProperty("weather").GetString()!, r.GetProperty("name").GetString()!)));
        var layout = Path.Combine(run.Folder, "layout.toml");
        File.WriteAllText(layout, "format = 1\n[choices]\nheater = \"fan-heater-2kw\"\nheater_set_c = 4\n");
        foreach (var (file, row) in new[] { (one, rows[1]), (two, rows[3]) })
        {
            var alone = JsonDocument.Parse(Cli.Run("simulate", run.Folder, "--layout", layout, "--weather", file, "--json").Output).RootElement;
            Assert.Equal(alone.GetProperty("frostDegreeHoursKh").GetRawText(), row.GetProperty("frostDegreeHoursKh").GetRawText());
            Assert.Equal(alone.GetProperty("lifeCost").GetRawText(), row.GetProperty("lifeCost").GetRawText());
        }
    }

    [Fact]
    public void Every_fault_is_told_with_its_place_and_nothing_is_printed()
    {
        const string text = "name,heater,heater_set_c,barel_count,collector\na,fan-heater-2kv,4,2,none\nb,fan-heater-2kw,400,2,none\nc,none,,0,flat-plate-2m2\n";
        var (code, output, error) = Cli.RunOn(text, "simulate", Sample, "--layouts", "-");
        Assert.Equal((ExitCode.BadInput, ""), (code, output));
        Assert.Contains("standard input:1:26: found 'barel_count'", error, StringComparison.Ordinal);
        Assert.Contains("standard input:2:3: found 'fan-heater-2kv'", error, StringComparison.Ordinal);
        Assert.Contains("standard input:3:18: found '400'", error, StringComparison.Ordinal);
        Assert.Contains("since this layout has a", error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.BadInput, Cli.RunOn("", "simulate", Sample, "--layouts", "-").Code);
        Assert.Equal(ExitCode.BadInput, Cli.Run("simulate", Sample, "--layouts", "no-such-folder").Code);
        Assert.Equal(ExitCode.BadInput, Cli.Run("simulate", Sample, "--layouts", Path.Combine(Sample, "lists"), "--layout", "x.toml").Code);
        Assert.Equal(ExitCode.BadInput, Cli.Run("simulate", Sample, "--layouts", Path.Combine(Sample, "lists"), "--hourly", "x.csv").Code);
        Assert.Equal(ExitCode.BadInput, Cli.Run("simulate", Sample, "--layout", "x.toml", "--weathers", "x.csv").Code);
    }

    private static List<JsonElement> Lines((int Code, string Output, string Error) ran)
    {
        Assert.True(ran.Code == ExitCode.Done, ran.Error);
        return [.. ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => JsonDocument.Parse(l).RootElement)];
    }
}
