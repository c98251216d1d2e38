using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>A part and how much of it a layout needs.</summary>
/// <param name="Part">The part.</param>
/// <param name="Quantity">How much, in the part's unit, allowance for cuts included.</param>
/// <param name="System">Subsystem, for the subtotals of the bill.</param>
/// <param name="Why">Why it is needed.</param>
/// <param name="Where">Where it goes.</param>
public sealed record NeededPart(IPart Part, decimal Quantity, string System, string Why, string Where);
