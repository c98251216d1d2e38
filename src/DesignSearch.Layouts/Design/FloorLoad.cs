namespace DesignSearch.Layouts.Design;

/// <summary>Weight of a full store on the floor.</summary>
/// <param name="What">The store, in a word.</param>
/// <param name="KgPerM2">Weight over the floor it stands on [kg/m²].</param>
public readonly record struct FloorLoad(string What, double KgPerM2);
