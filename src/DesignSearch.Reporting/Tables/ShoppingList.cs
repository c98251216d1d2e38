using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Tables;

/// <summary>
/// Writes what to buy for one layout: <c>lists/1-….csv</c>. First article by article, in packs, with what is left of them; then again line by
/// line with a subtotal for each system. Both end with the build price.
/// </summary>
/// <remarks>Column <c>row</c> says what a line is, so that a spreadsheet can sum one kind; the last column carries the version of the format.</remarks>
internal static class ShoppingList
{
    /// <summary>Version of the format.</summary>
    public const int Format = 2;

    // Adding it makes a sum show its cents, zeros included.
    private const decimal ToCents = 0.00m;

    /// <summary>The list of a layout.</summary>
    /// <exception cref="InputException">The stored lines contradict each other or the stored build price.</exception>
    public static string Of(JudgedLayout layout, string currency)
    {
        Check(layout);
        var table = new CsvText(
            [], "row", "system", "part", "part_id", "quantity", "unit", "unit_price", "owned", "pack", "packs", "bought", "left_over",
            "total", "why", "where", "currency", "format_version");
        foreach (var a in BillArticle.Of(layout.Bill))
            table.Row(
                "article", null, a.Name, a.PartId, a.Quantity, a.Unit, ToCents + a.UnitPrice, a.Owned, a.Pack, a.Packs, a.Bought, a.LeftOver,
                ToCents + a.Total, null, null, currency, Format);
        Sum("total", "build price", layout.BuildPrice);
        foreach (var group in layout.Bill.GroupBy(l => l.System))
        {
            foreach (var line in group)
                table.Row(
                    "item", line.System, line.Name, line.PartId, line.Quantity, line.Unit, ToCents + line.UnitPrice, line.Owned,
                    null, null, null, null, ToCents + line.Total, line.Why, line.Where, currency, Format);
            Sum("subtotal", group.Key, group.Sum(l => l.Total));
        }

        Sum("total", "build price", layout.BuildPrice);
        return table.ToString();

        void Sum(string row, string system, decimal total) => table.Row(
            row, system, null, null, null, null, null, null, null, null, null, null, ToCents + total, null, null, currency, Format);
    }

    // A damaged file is refused before anything is written.
    private static void Check(JudgedLayout layout)
    {
        var sum = layout.Bill.Sum(l => l.Total);
        if (sum != layout.BuildPrice)
            throw Damaged(
                Say.Cents(sum),
                $"the lines of layout {Say.Whole(layout.Rank)} to add up to its build price, {Say.Cents(layout.BuildPrice)}");
        foreach (var article in layout.Bill.GroupBy(l => l.PartId, StringComparer.Ordinal))
        {
            var pack = article.First().Pack;
            if (article.Any(l => l.Pack != pack) || !PartInfo.IsPack(pack))
                throw Damaged(article.Key, "one pack for all lines of a part, of a size that a catalogue may name");
        }
    }

    private static InputException Damaged(string found, string expected) =>
        new(new InputFault("run.json", 1, 0, found, expected + "; the file was changed by hand or is damaged"));
}
