using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Slips in a format of one's own, and files that a format does not fit: each told where it stands.</summary>
public sealed class OwnFormatTests
{
    private const string Sound = """
        title = "The logger in the shed"
        provider = "own"
        detect = ["SHED"]
        missing = [-99]
        [head]
        kind = "labels"
        name = "site"
        [time]
        columns = [["when"]]
        patterns = ["YYYY-MM-DD hh:mm"]
        years = "real"
        [stamp]
        radiation = "starting"
        weather = "starting"
        [fields]
        air = { names = ["t"], unit = "C", needed = true }
        """;

    [Theory]
    [InlineData("missing = [-99]", "missing = -99", 4, "a list of numbers for 'missing'")]
    [InlineData("missing = [-99]", "missing = [-99, \"NA\"]", 4, "a list of numbers for 'missing'")]
    [InlineData("[\"SHED\"]", "\"SHED\"", 3, "a list of words in quotes for 'detect'")]
    [InlineData("[\"SHED\"]", "[\"SHED\", 1]", 3, "a list of words in quotes for 'detect'")]
    [InlineData("[\"SHED\"]", "[\"\"]", 3, "a list of words in quotes for 'detect'")]
    [InlineData("name = \"site\"", "name = 3", 7, "words in quotes for 'name'")]
    [InlineData("name = \"site\"", "nmae = \"site\"", 7, "a known key in [head] (did you mean 'name'?)")]
    [InlineData("\"labels\"\nname = \"site\"", "\"positions\"\nname = \"site\"", 7, "the number of a field in quotes, \"1\" to \"1000\", for 'name'")]
    [InlineData("\"labels\"\nname = \"site\"", "\"positions\"\nname = \"0\"", 7, "the number of a field in quotes, \"1\" to \"1000\", for 'name'")]
    [InlineData("\"labels\"\nname = \"site\"", "\"positions\"\nname = \"1001\"", 7, "the number of a field in quotes, \"1\" to \"1000\", for 'name'")]
    [InlineData("\"labels\"\nname = \"site\"", "\"patterns\"\nname = \"site\"", 7, "a regular expression with one group in brackets")]
    [InlineData("\"labels\"\nname = \"site\"", "\"patterns\"\nname = \"si(te\"", 7, "a regular expression with one group in brackets")]
    [InlineData("\"labels\"\nname = \"site\"", "\"patterns\"\nname = \"(a)(?=b)\"", 7, "a regular expression with one group in brackets")]
    [InlineData("[[\"when\"]]", "\"when\"", 9, "a list of column names, or of lists of them, for 'columns'")]
    [InlineData("[[\"when\"]]", "[[\"when\"], [3]]", 9, "a list of column names, or of lists of them, for 'columns'")]
    [InlineData("[[\"when\"]]", "[[\"when\"], []]", 9, "a list of column names, or of lists of them, for 'columns'")]
    [InlineData("[[\"when\"]]", "[]", 8, "[time] with columns and patterns")]
    [InlineData("[\"YYYY-MM-DD hh:mm\"]", "[]", 8, "[time] with columns and patterns")]
    [InlineData("years = \"real\"", "years = \"leap\"", 11, "one of \"real\", \"typical\", \"as they come\" for 'years'")]
    [InlineData("radiation = \"starting\"", "radiation = \"begin\"", 13, "one of \"instant\", \"ending\", \"starting\", \"instant or starting\" for 'radiation'")]
    [InlineData("weather = \"starting\"", "weather = \"instant or starting\"", 14, "one of \"instant\", \"ending\", \"starting\" for 'weather'")]
    [InlineData("names = [\"t\"], unit", "unit", 16, "the names of the column in a list for 'names' in [fields.air]")]
    [InlineData("needed = true", "needed = false", 15, "the air temperature among [fields]")]
    [InlineData("unit = \"C\"", "unti = \"C\"", 16, "a known key in [fields.air] (did you mean 'unit'?)")]
    public void A_slip_is_told_at_its_line(string right, string wrong, int line, string expected)
    {
        var spoilt = Sound.ReplaceLineEndings("\n").Replace(right, wrong, StringComparison.Ordinal);
        var faults = Faults(spoilt, "SHED\nwhen,t\n");
        Assert.Contains(faults, f => f.Line == line && f.Expected.Contains(expected, StringComparison.Ordinal));
        Assert.All(faults, f => Assert.EndsWith("shed.toml", f.File, StringComparison.Ordinal));
    }

    [Fact]
    public void Positions_and_patterns_at_their_ends_are_taken()
    {
        foreach (var head in (string[])["\"positions\"\nname = \"1\"", "\"positions\"\nname = \"1000\"", "\"patterns\"\nname = \"site (.*)\""])
        {
            var faults = Faults(Sound.ReplaceLineEndings("\n").Replace("\"labels\"\nname = \"site\"", head, StringComparison.Ordinal), "SHED\nwhen,t\n");
            Assert.DoesNotContain(faults, f => f.File.EndsWith("shed.toml", StringComparison.Ordinal));
        }
    }

    // Layouts without names must show where everything stands; in the field "air" codes stand for values.
    [Theory]
    [InlineData("kind = \"fixed\"\nrow = \"^.\"\nplaces = \"t\"", "a list of [\"name\", first character, last character] for 'places'")]
    [InlineData("kind = \"fixed\"\nrow = \"^.\"\nplaces = [[\"when\", 1, 16], [\"t\", 0, 20]]", "[\"name\", first character, last character] in 'places'")]
    [InlineData("kind = \"fixed\"\nrow = \"^.\"\nplaces = [[\"when\", 1, 16], [\"t\", 20, 19]]", "[\"name\", first character, last character] in 'places'")]
    [InlineData("kind = \"fixed\"\nrow = \"^.\"\nplaces = [[\"when\", 1, 16], [\"t\", 18, 10001]]", "[\"name\", first character, last character] in 'places'")]
    [InlineData("kind = \"fixed\"\nrow = \"^.\"\nplaces = [[\"when\", 1, 16], [3, 18, 20]]", "[\"name\", first character, last character] in 'places'")]
    [InlineData("kind = \"fixed\"\nrow = \"^.\"\nplaces = [[\"when\", 1, 16], [\"t\", 18, 18.5]]", "[\"name\", first character, last character] in 'places'")]
    [InlineData("kind = \"fixed\"\nrow = \"^.\"\nplaces = [[\"when\", 1, 16]]", "'t' among the places in [table]")]
    [InlineData("kind = \"fixed\"\nrow = \"^.\"\nplaces = [[\"when\", 1, 16], [\"t\", 18, 20], [\"t\", 21, 22]]", "every name once in [table]")]
    [InlineData("kind = \"fixed\"\nplaces = [[\"when\", 1, 16], [\"t\", 18, 20]]", "a regular expression that every row fits, for 'row' in [table]")]
    [InlineData("kind = \"fixed\"\nrow = \"(?=a)\"\nplaces = [[\"when\", 1, 16], [\"t\", 18, 20]]", "a regular expression that neither looks around nor back, for 'row'")]
    [InlineData("kind = \"elements\"\nrow = \"^.\"\nnames = [\"day\", \"value\"]", "'element' among the names in [table]")]
    [InlineData("kind = \"month lines\"\nrow = \"^.\"\nplaces = [[\"station\", 1, 2], [\"month\", 3, 8], [\"element\", 9, 9], [\"value\", 10, 14], [\"flag\", 15, 15]]", "the characters from one day to the next, for 'day_width' in [table]")]
    [InlineData("kind = \"month lines\"\nday_width = 101\nrow = \"^.\"\nplaces = [[\"station\", 1, 2], [\"month\", 3, 8], [\"element\", 9, 9], [\"value\", 10, 14], [\"flag\", 15, 15]]", "from 0 to 100")]
    [InlineData("kind = \"fixed\"\nrow = \"^.\"\nplaces = [[\"when\", 1, 16], [\"t\", 18, 10000]]", "")]
    [InlineData("kind = \"month lines\"\nday_width = 100\nrow = \"^.\"\nplaces = [[\"station\", 1, 2], [\"month\", 3, 8], [\"element\", 9, 9], [\"value\", 10, 14], [\"flag\", 15, 15]]", "")]
    [InlineData("kind = \"elements\"\nrow = \"^.\"\nnames = [\"day\", \"element\", \"value\"]", "")]
    public void A_layout_without_names_shows_where_everything_stands(string table, string expected)
    {
        var format = Sound.ReplaceLineEndings("\n").Replace("[stamp]", $"[table]\n{table}\n[stamp]", StringComparison.Ordinal);
        var told = Faults(format, "nothing\n").Where(f => f.File.EndsWith("shed.toml", StringComparison.Ordinal)).ToList();
        Assert.Equal(expected.Length > 0, told.Any(f => f.Expected.Contains(expected, StringComparison.Ordinal)));
        Assert.Equal(expected.Length == 0, told.Count == 0);
    }

    [Theory]
    [InlineData("codes = [[1, 2, 3]]", "[code, value] in 'codes'")]
    [InlineData("codes = [[1, \"a\"]]", "[code, value] in 'codes'")]
    [InlineData("codes = [1]", "[code, value] in 'codes'")]
    [InlineData("part = 1001", "from 0 to 1000")]
    [InlineData("times = 1e7", "from 1E-06 to 1000000")]
    [InlineData("codes = [[1, 2.5]], part = 1000, times = 1e6", "")]
    public void A_field_has_codes_in_pairs(string written, string expected)
    {
        var told = Faults(Sound.ReplaceLineEndings("\n").Replace("needed = true", "needed = true, " + written, StringComparison.Ordinal), "SHED\nwhen,t\n").Where(f => f.File.EndsWith("shed.toml", StringComparison.Ordinal)).ToList();
        Assert.Equal(expected.Length > 0 ? 1 : 0, told.Count);
        Assert.All(told, f => Assert.Contains(expected, f.Expected, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("SHED\nnothing of it\n2021-01-01 00:00,5\n", 1, 0, "a line of column names with when")]
    [InlineData("SHED\nwhen,t\n2021-01-01 00:00,5\n", 2, 0, "two rows of data or more below the column names")]
    public void A_file_that_the_format_does_not_fit_is_told(string text, int line, int column, string expected) =>
        Assert.Contains(Faults(Sound, text), f => f.Line == line && f.Column == column && f.Expected.Contains(expected, StringComparison.Ordinal));

    private static IReadOnlyList<InputFault> Faults(string format, string text)
    {
        var folder = Directory.CreateTempSubdirectory("formats");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "shed.toml"), format);
            return TempFile.Faults(text, new() { FormatsFolder = folder.FullName, Place = Places.At(-44.2, 169.8, 11) });
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
