using System.Text;
using CsCheck;
using Xunit;

namespace DesignSearch.Files.Tests;

public sealed class CsvTableTests
{
    private const string Header = "id,size_m,price\n";

    [Theory]
    [InlineData("id,size_m,price\na,1.5,2.00\nb,2,3\n")]
    [InlineData("id,size_m,price\r\na,1.5,2.00\r\nb,2,3\r\n")]
    [InlineData("\uFEFFid,size_m,price\na,1.5,2.00\nb,2,3")]
    [InlineData("# said above\n\nid,size_m,price\n# said between\na , 1.5 ,\"2.00\"\n\nb,2,3\n")]
    [InlineData("price,id,size_m\n2.00,a,1.5\n3,b,2\n")]
    [InlineData("id;size_m;price\na;1,5;2,00\nb;2;3\n")]
    [InlineData("\uFEFFid;size_m;price\r\na;1.5;\"2,00\"\r\nb;2;3,00\r\n")]
    public void Good_tables_are_read(string text)
    {
        var (rows, faults) = Read(text);
        Assert.Empty(faults);
        Assert.Equal([("a", 1.5, 2.00m), ("b", 2.0, 3m)], rows);
    }

    [Fact]
    public void Every_fault_is_found_at_once()
    {
        var (rows, faults) = Read(Header + "a,\"1,5\",2.00\nb,2\nC,99,2.005\nok,1,1\n,,\n");
        Assert.Equal([("ok", 1.0, 1m)], rows);
        Assert.Equal(
            [(2, 3, "1,5"), (3, 0, "2 cells"), (4, 1, "C"), (4, 3, "99"), (4, 6, "2.005"), (6, 1, ""), (6, 2, ""), (6, 3, "")],
            faults.OrderBy(f => f.Line).ThenBy(f => f.Column).Select(f => (f.Line, f.Column, f.Value)));
        Assert.All(faults, f => Assert.Equal("t.csv", f.File));
    }

    [Fact]
    public void Header_faults_are_found_at_once()
    {
        var (rows, faults) = Read("# note\nid,sise_m,id,colour\na,1,b,red\n");
        Assert.Empty(rows);
        Assert.Collection(
            faults.OrderBy(f => f.Column),
            f => Assert.Contains("a column price (what it costs)", f.Expected, StringComparison.Ordinal),
            f => Assert.True(f.Column == 4 && f.Value == "sise_m" && f.Expected.Contains("did you mean 'size_m'?", StringComparison.Ordinal), f.ToString()),
            f => Assert.True(f.Column == 11 && f.Expected.Contains("twice", StringComparison.Ordinal), f.ToString()),
            f => Assert.True(f.Column == 14 && f.Value == "colour" && !f.Expected.Contains("did you mean", StringComparison.Ordinal), f.ToString()));
        Assert.All(faults, f => Assert.Equal(2, f.Line));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("# only a comment\n")]
    [InlineData("\uFEFF")]
    public void Empty_file_is_one_fault(string text) => Assert.Contains("a header line with the columns id,size_m,price", Assert.Single(Read(text).Faults).Expected, StringComparison.Ordinal);

    [Fact]
    public void Other_separators_are_one_fault()
    {
        var fault = Assert.Single(Read("id\tsize_m\tprice\na\t1.5\t2.00\n").Faults);
        Assert.Equal((1, 3, "tab"), (fault.Line, fault.Column, fault.Value));
        Assert.Contains("commas or semicolons between the cells", fault.Expected, StringComparison.Ordinal);
    }

    // Beside semicolons a comma is a decimal sign; what may be fifteen hundred or one and a half is asked back.
    [Theory]
    [InlineData("a;1.500;1", 2, 3, "(write 1.5)")]
    [InlineData("a;1;1.500", 2, 5, "(write 1.5)")]
    [InlineData("a;1.234,5;1", 2, 3, "(write 1234.5)")]
    [InlineData("a;1;3,205", 2, 5, "at most two decimals")]
    [InlineData("a;1;2;3", 2, 0, "text with a semicolon")]
    public void Semicolons_bring_decimal_commas_and_no_doubt(string row, int line, int column, string expected)
    {
        var fault = Assert.Single(Read("id;size_m;price\n" + row + "\n").Faults);
        Assert.Equal((line, column), (fault.Line, fault.Column));
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_small_number_with_three_decimals_is_clear_beside_semicolons() =>
        Assert.Equal(0.025, Assert.Single(Read("id;size_m;price\na;0.025;1\n").Rows).Size);

    [Theory]
    [InlineData("30 €", "(write 30, without sign)")]
    [InlineData("ca. 30", "(write 30, without words)")]
    [InlineData("\"1,50\"", "(write 1.5)")]
    public void Money_with_something_beside_it_is_told_how_to_be_written(string price, string expected) =>
        Assert.Contains(expected, Assert.Single(Read(Header + $"a,1,{price}\n").Faults).Expected, StringComparison.Ordinal);

    [Theory]
    [InlineData("  \n")]
    [InlineData(",,\n")]
    [InlineData("\"\n")]
    [InlineData("\r")]
    public void Header_of_nothing_is_a_fault(string text) => Assert.NotEmpty(Read(text).Faults);

    [Theory]
    [InlineData(" \n\n# note\r\n")]
    [InlineData("\r\r\r")]
    public void Header_is_placed_behind_blank_lines(string before)
    {
        var fault = Assert.Single(Read(before + "id,size_m,price,x\na,1,2,3\n").Faults);
        Assert.Equal((4, 17, "x"), (fault.Line, fault.Column, fault.Value));
    }

    [Fact]
    public void Header_without_rows_is_an_empty_table()
    {
        var (rows, faults) = Read(Header);
        Assert.Empty(rows);
        Assert.Empty(faults);
    }

    [Theory]
    [InlineData("a,1,2\n\"b,1,2\nc,1,2\n", 3, "closing double quote")]
    [InlineData("a\"b,1,2\n", 2, "double quotes only around")]
    [InlineData("\"a\"b,1,2\n", 2, "after a closing double quote")]
    [InlineData("a,1,2,3\n", 2, "3 cells")]
    public void Broken_rows_are_placed(string body, int line, string expected)
    {
        var fault = Assert.Single(Read(Header + body).Faults);
        Assert.Equal(line, fault.Line);
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a,\"1\n5\",2\nb,x,2\n", 2, 3)]
    public void Lines_inside_quotes_are_counted(string body, int line, int column)
    {
        var faults = Read(Header + body).Faults;
        Assert.Equal((line, column), (faults[0].Line, faults[0].Column));
        Assert.Equal((4, 3), (faults[1].Line, faults[1].Column));
    }

    [Theory]
    [InlineData("1,5")]
    [InlineData("1,500")]
    [InlineData("1 500")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e999")]
    [InlineData("0x10")]
    [InlineData("(1)")]
    [InlineData("$1")]
    [InlineData("١")]
    [InlineData("-1")]
    [InlineData("")]
    public void Numbers_that_are_none_are_refused(string number) =>
        Assert.Contains("size_m: a number from 0 to 10", Assert.Single(Read(Header + $"a,\"{number}\",1\n").Faults).Expected, StringComparison.Ordinal);

    [Fact]
    public void Foreign_bytes_and_binary_are_refused()
    {
        var faults = new FaultList();
        CsvTable.Read("t.csv", [.. "id,size_m,price\na"u8, 0xE9, .. ",1,1\n"u8], Row, faults);
        Assert.Equal(2, Assert.Single(faults.Faults).Line);
        Assert.Contains("a NUL character", Assert.Single(Read(Header + "a\0,1,1\n").Faults).Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_file_is_one_fault()
    {
        var faults = new FaultList();
        Assert.Empty(CsvTable.ReadFile("no-such.csv", Row, faults));
        Assert.Equal("no-such.csv: expected a file of this name; there is none", Assert.Single(faults.Faults).ToString());
    }

    [Fact]
    public void Folder_in_place_of_a_file_is_one_fault()
    {
        var faults = new FaultList();
        Assert.Empty(CsvTable.ReadFile(Path.GetTempPath(), Row, faults));
        Assert.Single(faults.Faults);
    }

    [Fact]
    public void No_text_whatever_makes_the_reader_fail() =>
        Gen.String[Gen.Char["ab1.,\"\n\r#-'=\t é\uFEFF"], 0, 60].Sample(text =>
        {
            Read(text);
            var (rows, faults) = Read(Header + text);
            Assert.All(faults, f => Assert.True(f.Line >= 0 && f.Column >= 0 && f.Expected.Length > 0));
            Assert.All(rows, r => Assert.InRange(r.Size, 0, 10));
        }, iter: 5000);

    private static (string Id, double Size, decimal Price) Row(ICsvCells cells) => (cells.Slug("id", "its name"), cells.Number("size_m", 0, 10, "how large"), cells.Money("price", "what it costs"));

    private static (List<(string Id, double Size, decimal Price)> Rows, IReadOnlyList<InputFault> Faults) Read(string text)
    {
        var faults = new FaultList();
        return ([.. CsvTable.Read("t.csv", Encoding.UTF8.GetBytes(text), Row, faults).Select(e => e.Value)], faults.Faults);
    }
}
