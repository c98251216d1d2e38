using System.Text;
using Xunit;

namespace DesignSearch.Files.Tests;

public sealed class SpreadsheetTableTests
{
    private const string Table = "# prices; invented, all\nname,quantity,note\n\"Pipe, 20 mm\",12.5,a;b\nTank,-3,1.5 m\n\"A \"\"good\"\" one\",1E-05,\n";

    [Fact]
    public void Semicolons_stand_between_cells_and_commas_in_numbers_only() => Assert.Equal(
        "# prices; invented, all\nname;quantity;note\nPipe, 20 mm;12,5;\"a;b\"\nTank;-3;1.5 m\n\"A \"\"good\"\" one\";1E-05;\n", SpreadsheetTable.Semicolons(Table));

    [Fact]
    public void A_byte_order_mark_goes_with_semicolons_only()
    {
        Assert.Equal(Encoding.UTF8.GetBytes(Table), SpreadsheetTable.Bytes(Table, CellSeparator.Comma));
        Assert.Equal([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(SpreadsheetTable.Semicolons(Table))], SpreadsheetTable.Bytes(Table, CellSeparator.Semicolon));
    }

    [Fact]
    public void Cells_are_numbers_words_or_nothing() => Assert.Equal(
        [["name", "quantity", "note"], ["Pipe, 20 mm", 12.5, "a;b"], ["Tank", -3.0, "1.5 m"], ["A \"good\" one", 1e-5, null]], SpreadsheetTable.Cells(Table));

    // What we write with semicolons, our own reader reads.
    [Fact]
    public void What_is_written_with_semicolons_is_read_again()
    {
        var faults = new FaultList();
        var rows = CsvTable.Read("t.csv", SpreadsheetTable.Bytes(Table, CellSeparator.Semicolon), c => (c.Text("name", "n"), c.Number("quantity", -5, 20, "q"), c.TextIfAny("note", "n")), faults);
        faults.ThrowIfAny();
        Assert.Equal([("Pipe, 20 mm", 12.5, "a;b"), ("Tank", -3.0, "1.5 m"), ("A \"good\" one", 1e-5, null)], rows.Select(r => r.Value));
    }
}
