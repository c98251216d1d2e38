using System.Diagnostics;
using DesignSearch.Files.Toml;
using Xunit;

namespace DesignSearch.Files.Tests;

/// <summary>Brackets and quotes that nothing closes, brackets without end, and files of nothing but slips.</summary>
public sealed class TomlBracketsTests
{
    [Theory]
    [InlineData("a = 1\nb = ", "[", 5)]
    [InlineData("a = 1\nb = ", "{a=", 5)]
    [InlineData("a = 1\nb = [ # a list\n", "[", 0)]
    public void Brackets_without_end_are_refused_where_the_first_too_many_stands(string before, string bracket, int column)
    {
        foreach (var depth in (int[])[TomlBrackets.Deepest + 1, 65, 300, 100_000])
        {
            var faults = new FaultList();
            TomlReader.ReadText(before + string.Concat(Enumerable.Repeat(bracket, depth)) + "\nc = \"x\"\n", "s.toml", faults).Text("c");
            var fault = Assert.Single(faults.Faults);
            Assert.Equal(before.Count(c => c == '\n') + 1, fault.Line);
            Assert.Equal(column + bracket.Length * TomlBrackets.Deepest, fault.Column);
            Assert.Equal("at most 16 brackets inside each other", fault.Expected);
        }
    }

    [Fact]
    public void Brackets_as_deep_as_allowed_are_read()
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("a = " + new string('[', 16) + new string(']', 16) + "\nb = 2\n", "s.toml", faults);
        Assert.Equal(2, file.Number("b", 0, 9));
        Assert.Empty(faults.Faults);
    }

    [Theory]
    [InlineData("}")]
    [InlineData("\"never closed")]
    public void Brackets_without_end_are_told_though_something_else_is_wrong_behind_them(string behind)
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText("a = " + new string('[', TomlBrackets.Deepest + 1) + behind + "\nc = 1\n", "s.toml", faults);
        Assert.Equal(1, file.Number("c", 0, 9));
        Assert.Contains((1, 5 + TomlBrackets.Deepest, "at most 16 brackets inside each other"), faults.Faults.Select(f => (f.Line, f.Column, f.Expected)));
    }

    [Theory]
    [InlineData("[t]\na = 1\nb = [2, 4, 6\nc = 3\n[u]\nd = 4\n", 3, 5, "]")]
    [InlineData("[t]\na = 1\nb = [2, [4,\n5, 6],\n\nc = 3\n[u]\nd = 4\n", 3, 5, "]")]
    [InlineData("[t]\nc = 3\na = 1\nb = [2, 4, 6\n[u]\nd = 4\n", 4, 5, "]")]
    [InlineData("[t]\na = 1\nb = { from = 1, to = 2\nc = 3\n[u]\nd = 4\n", 3, 5, "}")]
    [InlineData("[t]\na = 1\nb = \"\"\"words [ without\nc = 3\n[u]\nd = 4\n", 3, 5, "three more")]
    [InlineData("[t]\na = 1\nb = '''words\nc = 3\n[u]\nd = 4\n", 3, 5, "three more")]
    [InlineData("[t]\na = 1\nb = ['C:\\', 4\nc = 3\n[u]\nd = 4\n", 3, 5, "]")]
    [InlineData("[t]\na = 1\nb = [\"4\\\"]\", 4\nc = 3\n[u]\nd = 4\n", 3, 5, "]")]
    public void A_forgotten_closing_sign_is_told_where_the_opening_one_stands(string text, int line, int column, string expected)
    {
        var faults = new FaultList();
        var file = TomlReader.ReadText(text, "s.toml", faults);
        var fault = Assert.Single(faults.Faults);
        Assert.Equal((line, column), (fault.Line, fault.Column));
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);

        // The lines around it were read, and the spoilt key is not called missing.
        var table = file.Table("t", required: true)!;
        Assert.Equal(3, table.Number("c", 0, 9));
        table.Number("b", 0, 9);
        Assert.Equal(4, file.Table("u", required: true)!.Number("d", 0, 9));
        Assert.Single(faults.Faults);
    }

    [Theory]
    [InlineData("a = [ # one [\n  \"]\", ']', \"\\\"]\",\n]\nb = 1\n")]
    [InlineData("a = [[\n[1, 2],\n[3]\n]]\nb = 1\n")]
    [InlineData("a = \"\"\"\nx = [\n\\\"\"\" [u]\n\"\"\"\nb = 1\n")]
    [InlineData("\"a[\" = { x = [1,\n2], y = '{' }\nb = 1\n")]
    public void What_is_right_is_not_taken_for_forgotten(string text)
    {
        var faults = new FaultList();
        Assert.Equal(1, TomlReader.ReadText(text, "s.toml", faults).Number("b", 0, 9));
        Assert.Empty(faults.Faults);
    }

    [Theory]
    [InlineData("x = \"\\q\"\n")]
    [InlineData("x = 1\n")]
    [InlineData("x = [1\n")]
    [InlineData("x = '''1 \\'\n")]
    [InlineData("[x]\n")]
    [InlineData("[[x\n")]
    [InlineData("[")]
    [InlineData("x.")]
    [InlineData("= \" ' [\n")]
    [InlineData("x.y.z = { a.b = 1 }\n")]
    [InlineData("{")]
    [InlineData("\0")]
    public void A_file_full_of_slips_is_told_by_a_hundred_and_a_count_in_time(string piece)
    {
        var clock = Stopwatch.StartNew();
        var faults = new FaultList();
        TomlReader.ReadText(string.Concat(Enumerable.Repeat(piece, 900_000 / piece.Length)), "s.toml", faults);
        Assert.InRange(faults.Faults.Count, 1, FaultList.MostKept);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(15), $"{faults.Count} faults took {clock.Elapsed}");
    }

    [Fact]
    public void A_fault_shows_no_more_of_a_line_than_a_reader_needs()
    {
        var text = new InputFault("s.toml", 1, 1, new string('w', 76) + "\U0001F525" + new string('w', 9_000), "a word, not " + new string('v', 9_000)).ToString();
        Assert.InRange(text.Length, 500, 1_200);
        Assert.DoesNotContain(text, char.IsSurrogate);
        Assert.Contains("www...'", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hundred_faults_are_kept_and_the_others_counted()
    {
        var faults = new FaultList();
        for (var i = 1; i <= 250; i++)
            faults.Add("s.toml", i, 1, "x", "y");
        Assert.Equal((100, 250), (faults.Faults.Count, faults.Count));
        var thrown = Assert.Throws<InputException>(faults.ThrowIfAny);
        Assert.Equal((100, 150), (thrown.Faults.Count, thrown.Untold));
        var outer = new FaultList();
        outer.AddRange(thrown);
        Assert.Equal((100, 250), (outer.Faults.Count, outer.Count));
    }
}
