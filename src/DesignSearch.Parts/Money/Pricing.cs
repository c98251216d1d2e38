using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Money;

/// <summary>
/// The one place where quantities become money: an article is bought in whole packs and rounded to the cent, its lines share that by what
/// each needs, and a bill is the sum of its lines.
/// </summary>
public static class Pricing
{
    private const int CentsOfOne = 100;

    /// <summary>How much is bought: whole packs where it comes in packs.</summary>
    /// <param name="wanted">How much is needed and not owned, 0 or more.</param>
    /// <param name="pack">How much a pack holds, more than 0; null where any amount is sold.</param>
    public static decimal Bought(decimal wanted, decimal? pack) => pack is { } whole ? Math.Ceiling(wanted / whole) * whole : wanted;

    /// <summary>Price of one article: what is not owned, in whole packs, times the unit price, rounded to the cent, half a cent away from zero.</summary>
    /// <param name="quantity">How much is needed, 0 or more.</param>
    /// <param name="owned">How much is owned, 0 or more; more than the need is no credit.</param>
    /// <param name="unitPrice">Price of one unit, 0 or more.</param>
    /// <param name="pack">How much a pack holds, more than 0; null where any amount is sold.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is negative, or the pack holds nothing.</exception>
    public static decimal Total(decimal quantity, decimal owned, decimal unitPrice, decimal? pack = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(quantity);
        ArgumentOutOfRangeException.ThrowIfNegative(owned);
        ArgumentOutOfRangeException.ThrowIfNegative(unitPrice);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pack ?? 1, nameof(pack));
        return decimal.Round(Bought(Math.Max(0, quantity - owned), pack) * unitPrice, 2, MidpointRounding.AwayFromZero);
    }

    /// <summary>Price of a bill: the sum of its lines, each already rounded.</summary>
    /// <param name="lines">The lines.</param>
    public static decimal Total(IEnumerable<BillLine> lines) => lines.Sum(l => l.Total);

    /// <summary>
    /// Shares the price of an article out over its lines by what each has to buy, in whole cents: each gets its share rounded down, and the
    /// cents that are left go to the largest remainders, the earlier line first. The shares add up to the price.
    /// </summary>
    /// <param name="total">Price of the article, to the cent.</param>
    /// <param name="wanted">How much each line has to buy, 0 or more.</param>
    public static IReadOnlyList<decimal> Shares(decimal total, IReadOnlyList<decimal> wanted)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        var all = wanted.Sum();
        if (all <= 0)
            return [.. wanted.Select(_ => 0m)];
        var exact = wanted.Select(w => total * CentsOfOne * w / all).ToList();
        var cents = exact.Select(Math.Floor).ToArray();
        var left = (int)((total * CentsOfOne) - cents.Sum());
        foreach (var at in Enumerable.Range(0, cents.Length).OrderByDescending(i => exact[i] - cents[i]).Take(left))
            cents[at]++;
        return [.. cents.Select(c => c / CentsOfOne)];
    }

    /// <summary>Makes a line for a part that no other line needs; what is owned is used first.</summary>
    /// <param name="part">The part.</param>
    /// <param name="quantity">How much is needed in the part's unit, 0 or more.</param>
    /// <param name="owned">How much of it is still free in the stock, 0 or more.</param>
    /// <param name="system">The part of the installation that it belongs to.</param>
    /// <param name="why">Why it is needed.</param>
    /// <param name="where">Where it goes.</param>
    /// <param name="level">Which of the part's prices to pay.</param>
    public static BillLine Line(IPart part, decimal quantity, decimal owned, string system, string why, string where, PriceLevel level = PriceLevel.Usual)
    {
        ArgumentNullException.ThrowIfNull(part);
        var (price, pack) = (part.Info.PriceAt(level), part.Info.Pack);
        var total = Total(quantity, owned, price, pack);
        return new(part.Id, part.Name, quantity, part.Unit.Word(), price, Math.Min(owned, quantity), total, system, why, where) { Pack = pack };
    }
}
