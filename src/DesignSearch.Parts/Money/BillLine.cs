namespace DesignSearch.Parts;

/// <summary>One line of a shopping list.</summary>
/// <param name="PartId">Id in the catalogue.</param>
/// <param name="Name">Name of the part.</param>
/// <param name="Quantity">How much is needed, allowance for cuts included.</param>
/// <param name="Unit">piece, m, m2, l or set.</param>
/// <param name="UnitPrice">Price of one unit, to the cent.</param>
/// <param name="Owned">How much of it is already on hand and costs nothing.</param>
/// <param name="Total">What is paid for the rest, to the cent.</param>
/// <param name="System">Subsystem, for the subtotals.</param>
/// <param name="Why">Why it is needed, a plain sentence.</param>
/// <param name="Where">Where it goes.</param>
public sealed record BillLine(string PartId, string Name, decimal Quantity, string Unit, decimal UnitPrice, decimal Owned, decimal Total, string System, string Why, string Where);
