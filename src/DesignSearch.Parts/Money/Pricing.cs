using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Money;

/// <summary>The one place where quantities become money: a line is rounded to the cent, a bill is the sum of its lines.</summary>
public static class Pricing
{
    /// <summary>Price of one line: what is not owned, times the unit price, rounded to the cent, half a cent away from zero.</summary>
    /// <param name="quantity">How much is needed, 0 or more.</param>
    /// <param name="owned">How much is owned, 0 or more; more than the need is no credit.</param>
    /// <param name="unitPrice">Price of one unit, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is negative.</exception>
    public static decimal Total(decimal quantity, decimal owned, decimal unitPrice)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(quantity);
        ArgumentOutOfRangeException.ThrowIfNegative(owned);
        ArgumentOutOfRangeException.ThrowIfNegative(unitPrice);
        return decimal.Round(Math.Max(0, quantity - owned) * unitPrice, 2, MidpointRounding.AwayFromZero);
    }

    /// <summary>Price of a bill: the sum of its lines, each already rounded.</summary>
    /// <param name="lines">The lines.</param>
    public static decimal Total(IEnumerable<BillLine> lines) => lines.Sum(l => l.Total);

    /// <summary>Makes a line for a part; what is owned is used first.</summary>
    /// <param name="part">The part.</param>
    /// <param name="quantity">How much is needed in the part's unit, 0 or more.</param>
    /// <param name="owned">How much of it is still free in the stock, 0 or more.</param>
    /// <param name="system">The part of the installation that it belongs to.</param>
    /// <param name="why">Why it is needed.</param>
    /// <param name="where">Where it goes.</param>
    /// <param name="level">Which of the part's prices to pay.</param>
    public static BillLine Line(IPart part, decimal quantity, decimal owned, string system, string why, string where, PriceLevel level = PriceLevel.Usual)
    {
        var price = part.Info.PriceAt(level);
        return new(part.Id, part.Name, quantity, part.Unit.Word(), price, Math.Min(owned, quantity), Total(quantity, owned, price), system, why, where);
    }
}
