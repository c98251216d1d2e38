using System.Text;
using Xunit;

namespace DesignSearch.Files.Tests;

public sealed class MissingNumberTests
{
    [Theory]
    [InlineData("id,size_m\na,1.5\n", 1.5)]
    [InlineData("id,size_m\na,\n", null)]
    [InlineData("id\na\n", null)]
    public void A_number_may_be_missing(string text, double? expected)
    {
        var (rows, faults) = Read(text);
        Assert.Empty(faults);
        Assert.Equal([expected], rows);
    }

    [Theory]
    [InlineData("id,size_m\na,x\n")]
    [InlineData("id,size_m\na,11\n")]
    [InlineData("id,size_m\na,0\n")]
    public void A_number_that_is_there_must_be_one(string text) =>
        Assert.Contains("size_m: a number from 1 to 10", Assert.Single(Read(text).Faults).Expected, StringComparison.Ordinal);

    [Fact]
    public void Such_a_column_is_known_as_one_that_may_be_empty() => Assert.True(CsvColumns.Of(Row)[1].IsOptional);

    private static double? Row(ICsvCells cells)
    {
        cells.Slug("id", "which");
        return cells.NumberIfAny("size_m", 1, 10, "how large");
    }

    private static (IReadOnlyList<double?> Rows, IReadOnlyList<InputFault> Faults) Read(string text)
    {
        var faults = new FaultList();
        var entries = CsvTable.Read("t.csv", Encoding.UTF8.GetBytes(text), Row, faults);
        return ([.. entries.Select(e => e.Value)], faults.Faults);
    }
}
