using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Tables;

/// <summary>Writes what to buy for one layout: <c>lists/1-….csv</c>, with a subtotal for each subsystem and the build price at the end.</summary>
/// <remarks>Column <c>row</c> says what a line is, so that a sum in a spreadsheet can leave subtotals out; the last column carries the version of the format.</remarks>
internal static class ShoppingList
{
    /// <summary>Version of the format.</summary>
    public const int Format = 1;

    // Adding it makes a sum show its cents, zeros included.
    private const decimal ToCents = 0.00m;

    /// <summary>The list of a layout.</summary>
    /// <exception cref="InputException">The stored lines do not add up to the stored build price.</exception>
    public static string Of(JudgedLayout layout, string currency)
    {
        var sum = layout.Bill.Sum(l => l.Total);
        if (sum != layout.BuildPrice)
            throw new InputException(new InputFault(
                "run.json", 1, 0, Say.Cents(sum),
                $"the lines of layout {Say.Whole(layout.Rank)} to add up to its build price, {Say.Cents(layout.BuildPrice)}; the "
                    + $"file was changed by hand or is damaged"));
        var table = new CsvText([], "row", "system", "part", "part_id", "quantity", "unit", "unit_price", "owned", "total", "why", "where", "currency", "format_version");
        foreach (var group in layout.Bill.GroupBy(l => l.System))
        {
            foreach (var line in group)
                table.Row(
                    "item", line.System, line.Name, line.PartId, line.Quantity, line.Unit,
                    ToCents + line.UnitPrice, line.Owned, ToCents + line.Total, line.Why, line.Where, currency,
                    Format);
            table.Row("subtotal", group.Key, null, null, null, null, null, null, ToCents + group.Sum(l => l.Total), null, null, currency, Format);
        }

        table.Row("total", "build price", null, null, null, null, null, null, ToCents + layout.BuildPrice, null, null, currency, Format);
        return table.ToString();
    }
}
