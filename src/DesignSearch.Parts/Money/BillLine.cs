namespace DesignSearch.Parts.Money;

/// <summary>One line of a bill of materials.</summary>
/// <param name="PartId">Id of the part in the catalogue.</param>
/// <param name="Name">Its name.</param>
/// <param name="Quantity">How much of it is needed, 0 or more.</param>
/// <param name="Unit">Unit of the quantity and of the price.</param>
/// <param name="UnitPrice">Price of one unit.</param>
/// <param name="Owned">How much of the need is already owned, from 0 to <paramref name="Quantity"/>; it costs nothing.</param>
/// <param name="Total">Its share of what its article costs, to the cent; an article is bought for all its lines together.</param>
/// <param name="System">The part of the installation that it belongs to.</param>
/// <param name="Why">Why it is needed.</param>
/// <param name="Where">Where it goes.</param>
public sealed record BillLine(string PartId, string Name, decimal Quantity, string Unit, decimal UnitPrice, decimal Owned, decimal Total, string System, string Why, string Where)
{
    /// <summary>How much a pack of it holds; null where any amount is sold, and in runs that were stored before there were packs.</summary>
    public decimal? Pack { get; init; }

    /// <summary>How much it needs that is not owned.</summary>
    public decimal ToBuy => Quantity - Owned;
}
