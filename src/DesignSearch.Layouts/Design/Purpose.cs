namespace DesignSearch.Layouts.Design;

/// <summary>What a part is needed for.</summary>
/// <param name="System">Subsystem, for the subtotals of the bill.</param>
/// <param name="Why">Why it is needed.</param>
/// <param name="Where">Where it goes.</param>
public sealed record Purpose(string System, string Why, string Where);
