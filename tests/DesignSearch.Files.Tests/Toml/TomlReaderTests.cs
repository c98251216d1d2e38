using DesignSearch.Files.Toml;
using Xunit;

namespace DesignSearch.Files.Tests;

public sealed class TomlReaderTests
{
    [Theory]
    [InlineData("a = \"b\\")]
    [InlineData("a = \"\"\"b \\")]
    [InlineData("\\")]
    public void A_backslash_at_the_very_end_is_a_fault_like_any_other(string text)
    {
        var faults = new FaultList();
        TomlReader.ReadText(text, "s.toml", faults);
        Assert.All(faults.Faults, f => Assert.Equal(1, f.Line));
        Assert.NotEmpty(faults.Faults);
    }

    [Fact]
    public void Every_kind_of_mistake_is_found_in_one_reading()
    {
        const string text = """
            name = "a"
            [house]
            length_m = 24,5
            width_m = "four"
            height_m = -1
            heigth_m = 2
            roof = "flat"
            width_m = 5
            [season]
            start = 3
            """;
        var faults = new FaultList();
        var file = TomlReader.ReadText(text, "s.toml", faults);
        Assert.Equal("a", file.Text("name"));
        var house = file.Table("house", required: true)!;
        house.Number("length_m", 1, 50, "m");
        house.Number("width_m", 1, 50, "m");
        house.Number("height_m", 1, 5, "m");
        house.Word("roof", ["gable", "lean-to"]);
        house.Number("ridge_m", 1, 6, "m");
        house.ReportUnknown();
        var season = file.Table("season", required: true)!;
        season.Text("start");
        season.ReportUnknown();
        file.Table("tariff", required: true);
        file.ReportUnknown();

        var seen = faults.Faults.Select(f => (f.Line, f.Column, f.Value)).ToList();
        Assert.Contains((3, 12, "length_m = 24,5"), seen);
        Assert.Contains("a decimal point", faults.Faults[0].Expected, StringComparison.Ordinal);
        Assert.Contains((4, 11, "four"), seen);
        Assert.Contains((5, 12, "-1"), seen);
        Assert.Contains((6, 1, "heigth_m"), seen);
        Assert.Contains((7, 8, "flat"), seen);
        Assert.Contains(seen, s => s.Line == 8);
        Assert.Contains((10, 9, "3"), seen);
        Assert.Contains(faults.Faults, f => f.Expected.Contains("'ridge_m' in [house]", StringComparison.Ordinal));
        Assert.Contains(faults.Faults, f => f.Expected.Contains("[tariff]", StringComparison.Ordinal));
        Assert.Contains(faults.Faults, f => f.Expected.Contains("did you mean 'height_m'", StringComparison.Ordinal));
        Assert.Equal(9, faults.Faults.Count);
    }

    [Fact]
    public void Lists_inline_tables_and_table_arrays_keep_their_places()
    {
        const string text = "a = [1, 2.5]\nb = { from = 1, to = 5, step = 2 }\n[[w]]\nname = \"x\"\n[[w]]\nname = \"y\"\n[c.d]\ne = true\n";
        var faults = new FaultList();
        var file = TomlReader.ReadText(text, "s.toml", faults);
        Assert.Equal([1, 2.5], file.Numbers("a", 2, 0, 9, "m")!);
        Assert.Equal(5, file.Table("b", true)!.Number("to", 0, 9));
        Assert.Equal(["x", "y"], file.Tables("w").Select(t => t.Text("name")));
        Assert.True(file.Table("c", true)!.Table("d", true)!.Flag("e"));
        Assert.Empty(faults.Faults);
    }

    [Theory]
    [InlineData("x = nan")]
    [InlineData("x = inf")]
    [InlineData("x = 1e400")]
    [InlineData("x = [1]")]
    [InlineData("x = 2000-01-01")]
    public void A_number_that_is_none_is_refused(string text)
    {
        var faults = new FaultList();
        TomlReader.ReadText(text, "s.toml", faults).Number("x", 0, 10);
        Assert.Equal(1, Assert.Single(faults.Faults).Line);
    }

    [Theory]
    [InlineData("= = =\n[[[\n\"")]
    [InlineData("a = \"\"\"never closed\nb = 1")]
    [InlineData("[a]\n[a]\n[a]")]
    [InlineData("\0\u0001")]
    [InlineData("x = 99999999999999999999999")]
    public void Rubbish_is_reported_and_never_thrown(string text)
    {
        var faults = new FaultList();
        TomlReader.ReadText(text, "s.toml", faults);
        Assert.NotEmpty(faults.Faults);
    }

    [Fact]
    public void A_missing_file_is_one_fault()
    {
        var faults = new FaultList();
        TomlReader.ReadFile(Path.Combine(Path.GetTempPath(), "no-such-file.toml"), "no-such-file.toml", faults);
        Assert.Contains("there is none", Assert.Single(faults.Faults).ToString(), StringComparison.Ordinal);
    }
}
