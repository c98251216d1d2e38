using DesignSearch.Layouts.Design;

namespace DesignSearch.Layouts.Assess;

/// <summary>A layout worked out and priced, not yet simulated.</summary>
/// <param name="Built">The layout worked out.</param>
/// <param name="BuildPrice">Sum of its bill.</param>
/// <param name="Replacements">Present value of what must be bought again.</param>
/// <param name="LabourHours">Hours of own work.</param>
public sealed record PricedLayout(BuiltLayout Built, decimal BuildPrice, decimal Replacements, double LabourHours);
