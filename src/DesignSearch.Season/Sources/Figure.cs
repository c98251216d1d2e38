namespace DesignSearch.Season.Sources;

/// <summary>A figure of a season that one kind of source works out.</summary>
/// <param name="Id">Small letters and hyphens, of no other figure.</param>
/// <param name="Words">What a person calls it.</param>
/// <param name="Unit">Its unit as a person reads it.</param>
public sealed record Figure(string Id, string Words, string Unit);
