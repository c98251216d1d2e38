using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Money;

namespace DesignSearch.Layouts.Design.Money;

/// <summary>What of a stock is still free while a layout's needs are gone through: the same part needed in two places shares it.</summary>
/// <param name="stock">What is owned.</param>
internal sealed class FreeStock(Stock stock)
{
    private Dictionary<string, decimal>? used;

    /// <summary>Takes as much of what is needed as is free, and says how much that is.</summary>
    public decimal Take(NeededPart need)
    {
        var id = need.Part.Id;
        var owned = stock.QuantityOf(id);
        // Half a barrel is none.
        if (need.Part.Unit.IsWhole())
            owned = Math.Floor(owned);
        if (owned <= 0)
            return 0;
        used ??= new(StringComparer.Ordinal);
        var before = used.GetValueOrDefault(id);
        var taken = Math.Min(need.Quantity, Math.Max(0, owned - before));
        used[id] = before + taken;
        return taken;
    }
}
