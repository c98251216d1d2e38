using DesignSearch.Files.Toml;
using Xunit;

namespace DesignSearch.Files.Tests;

/// <summary>What a table answers, up to the ends of each range, and where and how it tells what is wrong.</summary>
public sealed class TomlTableTests
{
    [Theory]
    [InlineData("x = 1", true)]
    [InlineData("x = 2.5", true)]
    [InlineData("x = 0.999", false)]
    [InlineData("x = 2.501", false)]
    [InlineData("x = \"2\"", false, " (write 2, without quotes)")]
    [InlineData("x = true", false)]
    public void A_number_is_taken_in_its_range(string text, bool isTaken, string hint = "") => Check(text, isTaken, "a number from 1 to 2.5 kg for 'x'" + hint, t => t.Number("x", 1, 2.5, "kg"));

    [Theory]
    [InlineData("x = 1", true)]
    [InlineData("x = 3", true)]
    [InlineData("x = 0", false)]
    [InlineData("x = 4", false)]
    [InlineData("x = 2.0", false)]
    public void A_whole_number_is_taken_in_its_range(string text, bool isTaken) => Check(text, isTaken, "a whole number from 1 to 3 for 'x'", t => t.Whole("x", 1, 3));

    [Theory]
    [InlineData("x = 'abcd'", true)]
    [InlineData("x = 'abcde'", false)]
    [InlineData("x = ''", false)]
    [InlineData("x = 3", false, " (write it between double quotes)")]
    public void Words_are_taken_to_their_length(string text, bool isTaken, string hint = "") => Check(text, isTaken, "words in quotes, 1 to 4 characters for 'x'" + hint, t => t.Text("x", 4));

    [Theory]
    [InlineData("x = 'b'", true)]
    [InlineData("x = 'B'", false)]
    [InlineData("x = 1", false)]
    public void A_word_is_one_of_them(string text, bool isTaken) => Check(text, isTaken, "one of \"a\", \"b\" for 'x'", t => t.Word("x", ["a", "b"]));

    [Theory]
    [InlineData("x = true", true)]
    [InlineData("x = 'true'", false, " (write true, without quotes)")]
    [InlineData("x = 'nein'", false)]
    [InlineData("x = 1", false)]
    public void Yes_and_no_are_true_and_false(string text, bool isTaken, string hint = "") => Check(text, isTaken, "true or false for 'x'" + hint, t => t.Flag("x"));

    [Theory]
    [InlineData("x = [0, 2]", null)]
    [InlineData("x = [0]", "1:5 a list of 2 numbers, found 1")]
    [InlineData("x = [0, 1, 2]", "1:5 a list of 2 numbers, found 3")]
    [InlineData("x = 5", "1:5 a list of 2 numbers, found 1")]
    [InlineData("x = [0, -0.001]", "1:9 a number from 0 to 2 m")]
    [InlineData("x = [2.001, 1]", "1:6 a number from 0 to 2 m")]
    [InlineData("x = ['1', 1]", "1:6 a number from 0 to 2 m")]
    public void A_list_has_its_length_and_each_number_its_range(string text, string? told)
    {
        var faults = new FaultList();
        var numbers = TomlReader.ReadText(text, "s.toml", faults).Numbers("x", 2, 0, 2, "m");
        Assert.Equal(told is null, numbers is [0, 2]);
        Assert.Equal(told, faults.Faults.Select(f => FormattableString.Invariant($"{f.Line}:{f.Column} {f.Expected}")).SingleOrDefault());
    }

    [Fact]
    public void What_is_absent_is_its_fallback_or_is_told_at_the_header()
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("\n[a]\n[a.b]\nz = 1\n", "s.toml", faults);
        var table = file.Table("a", required: true)!.Table("b", required: true)!;
        Assert.Equal((7.0, 3.0, 4), (table.Number("n", 0, 9, "", 7.0), table.Number("n", 0, 9, "", 3), table.Whole("n", 0, 9, 4)));
        Assert.Equal(("w", "w", true), (table.Text("n", 9, "w"), table.Word("n", ["v", "w"], "w"), table.Flag("n", true)));
        Assert.Null(table.Numbers("n", 2, 0, 9, ""));
        Assert.Null(table.Table("n", required: false));
        Assert.Empty(table.Tables("n"));
        Assert.Empty(faults.Faults);
        table.Number("n", 2, 9);
        table.Table("t", required: true);
        table.FaultAt("n", "what", "something else");
        Assert.Equal(
            [(3, 0, "", "'n' in [a.b]: a number from 2 to 9"), (3, 0, "", "a heading [a.b.t] with what belongs to it"), (3, 0, "what", "something else")],
            faults.Faults.Select(f => (f.Line, f.Column, f.Value, f.Expected)));
    }

    [Fact]
    public void What_is_of_another_kind_is_told_at_its_value_and_shown_as_written()
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("t = 1.5\nl = [1, 'w', [true, false]]\nw = [{ n = 1 }, 2]\ni = { n = 1 }\nd = 2000-01-02\n", "s.toml", faults);
        file.Table("t", required: true);
        file.Tables("l");
        file.Tables("w");
        file.Number("i", 0, 9);
        file.Number("d", 0, 9);
        file.FaultAt("t", "so", "more");
        Assert.Equal(
            [
                (1, 5, "1.5", "a table [t]"), (2, 5, "[1, w, [true, false]]", "tables [[l]]"), (3, 5, "[a table, 2]", "tables [[w]]"),
                (4, 1, "a table", "a number from 0 to 9 for 'i'"), (5, 5, "2000-01-02", "a number from 0 to 9 for 'd'"), (1, 5, "so", "more"),
            ],
            faults.Faults.Select(f => (f.Line, f.Column, f.Value, f.Expected)));
    }

    [Fact]
    public void Asking_whether_a_key_is_there_does_not_make_it_known()
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("one = 1\ntwo = 2\n", "s.toml", faults);
        Assert.True(file.Has("one"));
        Assert.False(file.Has("three"));
        Assert.Equal(["one", "two"], file.Keys);
        Assert.NotNull(file.Find("two"));
        file.ReportUnknown();
        Assert.Equal((1, 1, "one", "a known key"), Assert.Single(faults.Faults.Select(f => (f.Line, f.Column, f.Value, f.Expected))));
    }

    [Fact]
    public void Every_table_of_a_list_bears_the_name_of_the_list()
    {
        var faults = new FaultList();
        var tables = TomlReader.ReadText("w = [{ n = 1 }, { n = 2 },\n { n = 3 }, { n = 4 }]\n[[v]]\nn = 5\n[[v]]\nn = 6\n", "s.toml", faults);
        Assert.Equal(["w", "w", "w", "w"], tables.Tables("w").Select(t => t.Name));
        Assert.Equal([1, 2, 3, 4], tables.Tables("w").Select(t => t.Whole("n", 0, 9)));
        Assert.Equal([("v", 5), ("v", 6)], tables.Tables("v").Select(t => (t.Name, t.Whole("n", 0, 9))));
        Assert.Empty(faults.Faults);
    }

    [Fact]
    public void A_file_in_foreign_bytes_or_too_large_is_one_fault_and_an_empty_table()
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory("designsearch-toml-").FullName, "s.toml");
        try
        {
            File.WriteAllBytes(path, [0xEF, 0xBB, 0xBF, .. "a = 1\n"u8]);
            Assert.Equal("a", Read(path));
            File.WriteAllBytes(path, [.. "a = 1\n\nb = 'caf"u8, 0xE9, .. "'\n"u8]);
            Assert.Equal("3:0 text in UTF-8, but this line holds other bytes; save the file as UTF-8 in the editor", Read(path));
            var million = "a = 1\n#" + new string('w', 999_993);
            File.WriteAllText(path, million);
            Assert.Equal("a", Read(path));
            File.WriteAllText(path, million + "w");
            Assert.Equal("0:0 a file of at most 1 MB, not of 1.0", Read(path));
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
        }
    }

    // The keys that were read and what was told, one after the other.
    private static string Read(string path)
    {
        var faults = new FaultList();
        var keys = TomlReader.ReadFile(path, "s.toml", faults).Keys;
        return string.Concat([.. keys, .. faults.Faults.Select(f => FormattableString.Invariant($"{f.Line}:{f.Column} {f.Expected}"))]);
    }

    private static void Check<T>(string text, bool isTaken, string expected, Func<TomlTable, T> ask)
    {
        var faults = new FaultList();
        ask(TomlReader.ReadText("\n" + text + "\n", "s.toml", faults));
        Assert.Equal(isTaken ? [] : [(2, 5, expected)], faults.Faults.Select(f => (f.Line, f.Column, f.Expected)));
    }
}
