using System.Text;
using Xunit;

namespace DesignSearch.Files.Tests;

/// <summary>Every kind of cell: what is taken, up to its ends, what is refused just beyond them, and in which words.</summary>
public sealed class CsvCellTests
{
    private static readonly Dictionary<string, Func<ICsvCells, object?>> Kinds = new(StringComparer.Ordinal)
    {
        ["slug"] = c => c.Slug("x", "what it is"),
        ["text"] = c => c.Text("x", "what it is"),
        ["text if any"] = c => c.TextIfAny("x", "what it is"),
        ["number"] = c => c.Number("x", -2, 10, "what it is"),
        ["number if any"] = c => c.NumberIfAny("x", -2, 10, "what it is"),
        ["whole"] = c => c.Whole("x", -2, 10, "what it is"),
        ["money"] = c => c.Money("x", "what it is"),
        ["money if any"] = c => c.MoneyIfAny("x", "what it is"),
        ["yes or no"] = c => c.YesNo("x", "what it is"),
        ["word"] = c => c.Word("x", [("steel", 'S'), ("glass", 'G'), ("wood", 'W')], "what it is"),
    };

    public static TheoryData<string, string, object?> Taken => new()
    {
        { "slug", "a", "a" },
        { "slug", "t-200", "t-200" },
        { "slug", new string('a', 60), new string('a', 60) },
        { "text", "x", "x" },
        { "text", new string('é', 400), new string('é', 400) },
        { "text if any", "", null },
        { "text if any", new string('w', 400), new string('w', 400) },
        { "number", "-2", -2.0 },
        { "number", "10", 10.0 },
        { "number if any", "", null },
        { "number if any", "-2.0", -2.0 },
        { "number if any", "1e1", 10.0 },
        { "whole", "-2", -2 },
        { "whole", "10", 10 },
        { "money", "0", 0m },
        { "money", "1000000000", 1_000_000_000m },
        { "money", "12.34", 12.34m },
        { "money", "5.500", 5.5m },
        { "money if any", "", null },
        { "money if any", "0.01", 0.01m },
        { "yes or no", "yes", true },
        { "yes or no", "no", false },
        { "word", "steel", 'S' },
        { "word", "wood", 'W' },
    };

    public static TheoryData<string, string, string> Refused => new()
    {
        { "slug", "", "x: a short name of small letters" },
        { "slug", "A", "x: a short name of small letters" },
        { "slug", "2-a", "x: a short name of small letters" },
        { "slug", "-a", "x: a short name of small letters" },
        { "slug", "a-", "x: a short name of small letters" },
        { "slug", "a_b", "x: a short name of small letters" },
        { "slug", "aB", "x: a short name of small letters" },
        { "slug", "é", "x: a short name of small letters" },
        { "slug", new string('a', 61), "x: a short name of small letters" },
        { "text", "", "x: some text, at most 400 characters" },
        { "text", new string('w', 401), "x: some text, at most 400 characters" },
        { "text if any", new string('w', 401), "x: some text, at most 400 characters, or nothing" },
        { "number", "-2.001", "x: a number from -2 to 10 with a decimal point and no thousands separator" },
        { "number", "10.001", "x: a number from -2 to 10 with a decimal point and no thousands separator" },
        { "number if any", "-2.001", "a number from -2 to 10 with a decimal point and no thousands separator, or nothing" },
        { "number if any", "10.001", "a number from -2 to 10 with a decimal point and no thousands separator, or nothing" },
        { "whole", "-3", "x: a whole number from -2 to 10" },
        { "whole", "11", "x: a whole number from -2 to 10" },
        { "whole", "1.0", "x: a whole number from -2 to 10" },
        { "whole", "", "x: a whole number from -2 to 10" },
        { "money", "-0.01", "x: an amount of money, 0 or more" },
        { "money", "1000000000.01", "x: an amount of money, 0 or more" },
        { "money", "0.005", "x: an amount of money, 0 or more" },
        { "money", "1e3", "x: an amount of money, 0 or more" },
        { "money", "", "x: an amount of money, 0 or more" },
        { "money if any", "0.005", "at most two decimals, or nothing" },
        { "yes or no", "true", "x: yes or no" },
        { "yes or no", "", "x: yes or no" },
        { "word", "stel", "x: steel, glass or wood (did you mean 'steel'?)" },
        { "word", "Steel", "x: steel, glass or wood (did you mean 'steel'?)" },
        { "word", "", "x: steel, glass or wood" },
    };

    [Theory]
    [MemberData(nameof(Taken))]
    public void Is_taken(string kind, string cell, object? expected)
    {
        var (row, faults) = Read(kind, $"y,x\n,{cell}\n");
        Assert.Empty(faults);
        Assert.Equal(expected, Assert.Single(row).Value);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void Is_refused_where_it_stands_and_in_words(string kind, string cell, string expected)
    {
        var (row, faults) = Read(kind, $"y,x\n,{cell}\n");
        Assert.Empty(row);
        var fault = Assert.Single(faults);
        Assert.Equal(("t.csv", 2, 2, cell), (fault.File, fault.Line, fault.Column, fault.Value));
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_is_known_by_the_words_its_cells_are_refused_with()
    {
        foreach (var (kind, read) in Kinds)
        {
            var column = Assert.Single(CsvColumns.Of(read));
            Assert.Equal(("x", "what it is", kind.EndsWith("if any", StringComparison.Ordinal)), (column.Name, column.What, column.IsOptional));
            var fault = Assert.Single(Read(kind, "y,x\n," + new string('!', 401) + "\n").Faults);
            Assert.StartsWith("x: " + column.Expected, fault.Expected, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_column_that_is_absent_is_told_once_or_is_nothing_where_it_may_be_absent()
    {
        foreach (var kind in Kinds.Keys)
        {
            var (rows, faults) = Read(kind, "y\n1\n2\n");
            if (kind.EndsWith("if any", StringComparison.Ordinal))
                Assert.Equal([null, null], rows.Select(r => r.Value));
            else
                Assert.Equal("a column x (what it is)", Assert.Single(faults).Expected);
        }
    }

    [Fact]
    public void A_cell_is_found_again_at_its_place_and_an_absent_one_at_its_row()
    {
        var entry = Assert.Single(Read("money if any", "# said above\ny,x\n\"a\nb\",5\n").Rows);
        Assert.Equal(("t.csv", 3), (entry.File, entry.Line));
        Assert.Equal(new TextPlace(3, 1), entry.PlaceOf("y"));
        Assert.Equal(new TextPlace(4, 4), entry.PlaceOf("x"));
        Assert.Equal(new TextPlace(3, 0), entry.PlaceOf("z"));
    }

    [Fact]
    public void A_table_may_be_five_megabytes_and_not_a_byte_more()
    {
        var head = "y,x\n,5\n#"u8.ToArray();
        foreach (var (size, isRead) in (ReadOnlySpan<(int, bool)>)[(5_000_000, true), (5_000_001, false)])
        {
            var faults = new FaultList();
            byte[] bytes = [.. head, .. Enumerable.Repeat((byte)'w', size - head.Length)];
            Assert.Equal(isRead ? 1 : 0, CsvTable.Read("t.csv", bytes, Row("money"), faults).Count);
            Assert.Equal(isRead ? [] : ["t.csv: expected a table of at most 5 MB"], faults.Faults.Select(f => f.ToString()));
        }
    }

    private static Func<ICsvCells, object?> Row(string kind) => cells =>
    {
        cells.TextIfAny("y", "beside it");
        return Kinds[kind](cells);
    };

    private static (IReadOnlyList<CsvEntry<object?>> Rows, IReadOnlyList<InputFault> Faults) Read(string kind, string text)
    {
        var faults = new FaultList();
        return (CsvTable.Read("t.csv", Encoding.UTF8.GetBytes(text), Row(kind), faults), faults.Faults);
    }
}
