using System.Text;
using CsCheck;
using Xunit;

namespace DesignSearch.Files.Tests;

public sealed class CsvTextTests
{
    [Fact]
    public void Table_is_written_plainly()
    {
        var table = new CsvText(["prices are invented"], "name", "quantity", "total");
        table.Row("Pipe, 20 mm", 12.5m, -3.20m);
        table.Row("A \"good\" tank", 2, 0.1);
        table.Row(null, null, 4L);
        Assert.Equal("# prices are invented\nname,quantity,total\n\"Pipe, 20 mm\",12.5,-3.20\n\"A \"\"good\"\" tank\",2,0.1\n,,4\n", table.ToString());
    }

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("  =1", "'  =1")]
    [InlineData("\t=1", "'\u2409=1")]
    [InlineData("\r=1", "'\u240D=1")]
    [InlineData("\uFF1D1", "'\uFF1D1")]
    [InlineData("a\0b", "a\u2400b")]
    [InlineData("a\nb", "a\u240Ab")]
    [InlineData("a\u001Bb\u007F", "a\u241Bb\u2421")]
    [InlineData("txt\u202Efdp", "txt\uFFFDfdp")]
    [InlineData("a-b=c", "a-b=c")]
    [InlineData("", "")]
    public void Hostile_text_is_made_harmless(string raw, string expected) => Assert.Equal(expected, CsvText.Harmless(raw));

    [Fact]
    public void Text_that_begins_like_a_comment_stays_a_row()
    {
        var table = new CsvText([], "name");
        table.Row("# not a comment");
        Assert.Equal("name\n\"# not a comment\"\n", table.ToString());
    }

    [Fact]
    public void Comment_cannot_leave_its_line()
    {
        Assert.Equal("# a\u240A=1+1\nname\n", new CsvText(["a\n=1+1"], "name").ToString());
    }

    [Fact]
    public void Wrong_rows_are_refused()
    {
        var table = new CsvText([], "a", "b");
        Assert.Throws<ArgumentException>(() => table.Row("1"));
        Assert.Throws<ArgumentException>(() => table.Row("1", double.NaN));
        Assert.Throws<ArgumentException>(() => table.Row("1", DateTime.UnixEpoch));
    }

    [Fact]
    public void What_is_written_is_read_again() =>
        Gen.Select(Gen.String[Gen.Char["abc ,\"'#é"], 1, 20], Gen.Int[-1_000_000, 1_000_000]).Sample((raw, thousandths) =>
        {
            var name = raw.Trim();
            if (name.Length == 0)
                return;
            var table = new CsvText([], "name", "value");
            table.Row(name, thousandths / 1000.0);
            var faults = new FaultList();
            var rows = CsvTable.Read("t.csv", Encoding.UTF8.GetBytes(table.ToString()), c => (c.Text("name", "n"), c.Number("value", -1e6, 1e6, "v")), faults);
            faults.ThrowIfAny();
            Assert.Equal((name, thousandths / 1000.0), Assert.Single(rows).Value);
        });
}
