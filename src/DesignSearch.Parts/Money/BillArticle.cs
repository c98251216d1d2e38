namespace DesignSearch.Parts.Money;

/// <summary>One article of a bill: all that is bought of one part, however many places need it.</summary>
/// <param name="PartId">Id of the part in the catalogue.</param>
/// <param name="Name">Its name.</param>
/// <param name="Unit">Unit of all amounts and of the price.</param>
/// <param name="UnitPrice">Price of one unit.</param>
/// <param name="Quantity">How much is used, over all lines.</param>
/// <param name="Owned">How much of that is already owned.</param>
/// <param name="Pack">How much a pack holds; null where any amount is sold.</param>
/// <param name="Bought">How much is bought: whole packs where it comes in packs, never less than what is not owned.</param>
/// <param name="Total">Price of what is bought, to the cent: the sum of its lines.</param>
public sealed record BillArticle(
    string PartId,
    string Name,
    string Unit,
    decimal UnitPrice,
    decimal Quantity,
    decimal Owned,
    decimal? Pack,
    decimal Bought,
    decimal Total)
{
    /// <summary>How many packs; null where any amount is sold.</summary>
    public decimal? Packs => Pack is { } pack ? Bought / pack : null;

    /// <summary>What is left of the packs, from 0 to less than one of them.</summary>
    public decimal LeftOver => Bought - (Quantity - Owned);

    /// <summary>The articles of a bill, in the order in which its lines first name them.</summary>
    /// <param name="lines">The lines.</param>
    public static IReadOnlyList<BillArticle> Of(IEnumerable<BillLine> lines) =>
        [.. lines.GroupBy(l => l.PartId, StringComparer.Ordinal).Select(g => Of([.. g]))];

    private static BillArticle Of(IReadOnlyList<BillLine> lines)
    {
        var (first, quantity, owned) = (lines[0], lines.Sum(l => l.Quantity), lines.Sum(l => l.Owned));
        var bought = Pricing.Bought(quantity - owned, first.Pack);
        return new(
            first.PartId, first.Name, first.Unit, first.UnitPrice, quantity, owned, first.Pack, bought, lines.Sum(l => l.Total));
    }
}
