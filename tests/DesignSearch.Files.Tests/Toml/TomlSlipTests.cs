using DesignSearch.Files.Toml;
using Xunit;

namespace DesignSearch.Files.Tests;

/// <summary>What people do who have never heard of TOML: one fault for one slip, where it was made, in words that mend it; and the rest is read.</summary>
public sealed class TomlSlipTests
{
    private const string Head = "name = \"Sandvig\"\n[site]\nlatitude_deg = 57.1\n";
    private const string Tail = "\npipe_run_m = 14\n[house]\nlength_m = 5\n";

    [Theory]
    [InlineData("place = \"Sandvig", 9, "one more of these quotes")]
    [InlineData("place = 'Sandvig", 9, "one more of these quotes")]
    [InlineData("place = Sandvig\"", 16, "a quote in front")]
    [InlineData("place = Sandvig", 9, "words between double quotes: \"Sandvig\"")]
    [InlineData("place = Sandvig by the sea  # invented", 9, "\"Sandvig by the sea\"")]
    [InlineData("place = “Sandvig”", 9, "plain double quotes")]
    [InlineData("place = [\"a\", \"b", 15, "one more of these quotes")]
    [InlineData("place = [\"a\", \"b\"", 9, "a ] that closes")]
    [InlineData("place = [\"a\",\n  \"b,\n  \"c\"]", 3, "one more of these quotes", 5)]
    [InlineData("place = \"\"\"\nSandvig is = \nand more", 9, "three more of these quotes")]
    [InlineData("place = { from = 1, to = 2", 9, "a } that closes")]
    [InlineData("place = yes", 9, "(write true)")]
    [InlineData("place = No # not yet", 9, "(write false)")]
    [InlineData("place = TRUE", 9, "(write true)")]
    [InlineData("place = true if the cable lies", 14, "a # in front of the remark")]
    [InlineData("place = 1500 €", 9, "(write 1500, without sign)")]
    [InlineData("place = € 1500", 9, "(write 1500, without sign)")]
    [InlineData("place = 1500 EUR", 9, "(write 1500, without sign)")]
    [InlineData("place = 3 %", 9, "(write 3, without sign)")]
    [InlineData("place = 5 m", 9, "(write 5 alone, without 'm')")]
    [InlineData("place = 5m # long", 9, "(write 5 alone, without 'm')")]
    [InlineData("place = 57,1", 9, "a number with a decimal point")]
    [InlineData("place = -0,5 # north", 9, "(write -0.5)")]
    [InlineData("place = 1 500", 9, "(write 1500, without anything between the digits)")]
    [InlineData("place = 1'500", 9, "(write 1500, without anything between the digits)")]
    [InlineData("place = 1.500,50", 9, "(write 1500.5)")]
    [InlineData("place = .5", 9, "(write 0.5)")]
    [InlineData("place = 5.", 9, "(write 5)")]
    [InlineData("place = 007", 9, "(write 7)")]
    [InlineData("place = −5", 9, "(write -5)")]
    [InlineData("place = 31-03", 9, "words between double quotes: \"31-03\"")]
    [InlineData("place = 2 twin-wall sheet of 6 mm", 11, "a # in front of the remark")]
    [InlineData("place = \"Sandvig\" by the sea", 19, "a # in front of the remark")]
    [InlineData("place = [1, 2] both", 16, "a # in front of the remark")]
    [InlineData("place = [1 2 3]", 11, "commas between the values")]
    [InlineData("place = \"C:\\my\\house\"", 12, "/ in place of \\")]
    [InlineData("place =", 7, "a value behind the =")]
    [InlineData("place = # later", 7, "a value behind the =")]
    [InlineData("place: \"Sandvig\"", 1, "an = between")]
    [InlineData("place 57.1", 1, "an = between")]
    [InlineData("this is where the house stands", 1, "a # in front of a remark")]
    [InlineData("the place = Sandvig", 1, "a # in front of a remark")]
    [InlineData("= 5", 1, "a key in front")]
    [InlineData("latitude_deg = 58", 1, "'latitude_deg' stands in line 3 already")]
    [InlineData("[site]", 0, "[site] stands in line 2 already")]
    public void Is_one_fault_where_it_was_made(string slip, int column, string expected, int line = 4)
    {
        var (faults, _) = Read(slip);
        var fault = Assert.Single(faults);
        Assert.Equal((line, column), (fault.Line, fault.Column));
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[house")]
    [InlineData("[house # the greenhouse")]
    [InlineData("[[house]")]
    public void A_heading_that_is_not_closed_is_told_and_taken(string heading)
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("[site]\na = 1\n" + heading + "\nb = 2\n", "s.toml", faults);
        var fault = Assert.Single(faults.Faults);
        Assert.Equal(3, fault.Line);
        Assert.Contains("a heading in brackets", fault.Expected, StringComparison.Ordinal);
        Assert.Equal(["site", "house"], file.Keys);
    }

    [Fact]
    public void What_stands_under_a_heading_that_is_none_is_not_told()
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("[site]\na = 1\n[green house]\nb = 2\n", "s.toml", faults);
        var site = file.Table("site", required: true)!;
        site.Whole("a", 0, 9);
        site.ReportUnknown();
        file.Table("greenhouse", required: true);
        file.ReportUnknown();
        Assert.Equal(3, Assert.Single(faults.Faults).Line);
    }

    [Fact]
    public void What_is_missing_is_called_missing_and_a_slip_in_a_key_is_told_once()
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("[site]\nlatitude = 57.1\n", "s.toml", faults);
        var site = file.Table("site", required: true)!;
        site.Number("latitude_deg", -66, 66, "°");
        site.Number("longitude_deg", -180, 180, "°");
        site.ReportUnknown();
        file.Table("money", required: true);
        Assert.Equal(
            [
                "s.toml:1:1: missing: 'longitude_deg' in [site]: a number from -180 to 180 °",
                "s.toml:2:1: found 'latitude'; expected a known key in [site] (did you mean 'latitude_deg'?)",
                "s.toml:1:1: missing: a heading [money] with what belongs to it",
            ],
            faults.Faults.Select(f => f.ToString()));
        Assert.Equal(3, faults.Count);
    }

    [Theory]
    [InlineData("x = \"1500 €\"", "(write 1500, without quotes and sign)")]
    [InlineData("x = \"1500\"", "(write 1500, without quotes)")]
    [InlineData("x = \"about 1500\"", "(write 1500, without quotes and words)")]
    public void A_number_in_quotes_is_told_how_to_be_written(string text, string expected)
    {
        var faults = new FaultList();
        TomlReader.ReadText(text, "s.toml", faults).Number("x", 0, 9999);
        Assert.Contains(expected, Assert.Single(faults.Faults).Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_are_none_and_flags_in_quotes_are_told_how_to_be_written()
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("x = \"yes\"\ny = 5\n", "s.toml", faults);
        file.Flag("x");
        file.Text("y");
        Assert.Contains("(write true, without quotes)", faults.Faults[0].Expected, StringComparison.Ordinal);
        Assert.Contains("(write it between double quotes)", faults.Faults[1].Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Twelve_wrong_numbers_are_one_fault_and_twenty_four_are_decimal_commas()
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("x = [30, 40, 2]\ny = [1,5, 2,5, 3,5]\n", "s.toml", faults);
        Assert.Null(file.Numbers("x", 3, 0, 10, "kWh"));
        Assert.Null(file.Numbers("y", 3, 0, 10, "kWh"));
        Assert.Equal(2, faults.Count);
        Assert.Contains("and 1 more are not", faults.Faults[0].Expected, StringComparison.Ordinal);
        Assert.Contains("with decimal points", faults.Faults[1].Expected, StringComparison.Ordinal);
    }

    // What stands around the slip is read, and the key in it is not called missing.
    private static (IReadOnlyList<InputFault> Faults, TomlTable File) Read(string slip)
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText(Head + slip + Tail, "s.toml", faults);
        file.Text("name");
        var site = file.Table("site", required: true)!;
        Assert.Equal(57.1, site.Number("latitude_deg", -66, 66));
        site.Find("place");
        if (slip != "[site]")
            Assert.Equal(14, site.Number("pipe_run_m", 0, 200, fallback: 0));
        else
            site.Number("pipe_run_m", 0, 200);
        site.ReportUnknown();
        var house = file.Table("house", required: true)!;
        Assert.Equal(5, house.Number("length_m", 0, 9));
        house.ReportUnknown();
        file.ReportUnknown();
        return (faults.Faults, file);
    }
}
