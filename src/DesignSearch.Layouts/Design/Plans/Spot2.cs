namespace DesignSearch.Layouts.Design.Plans;

/// <summary>A point of a section [m].</summary>
/// <param name="X">Across.</param>
/// <param name="Z">Above the floor.</param>
public readonly record struct Spot2(double X, double Z);
