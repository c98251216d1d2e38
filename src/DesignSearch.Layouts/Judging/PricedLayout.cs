using DesignSearch.Parts;

namespace DesignSearch.Layouts;

/// <summary>A layout worked out and priced, not yet simulated.</summary>
/// <param name="Built">The layout worked out.</param>
/// <param name="Bill">Its shopping list.</param>
/// <param name="BuildPrice">Sum of the bill.</param>
/// <param name="Replacements">Present value of what must be bought again.</param>
/// <param name="LabourHours">Hours of own work.</param>
public sealed record PricedLayout(BuiltLayout Built, IReadOnlyList<BillLine> Bill, decimal BuildPrice, decimal Replacements, double LabourHours);
