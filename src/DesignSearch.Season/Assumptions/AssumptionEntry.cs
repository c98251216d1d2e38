namespace DesignSearch.Season.Assumptions;

/// <summary>One number of the season model that an honest modeller could choose otherwise.</summary>
/// <param name="Key">Name in the scenario's [assumptions], small letters and underscores, unit at its end.</param>
/// <param name="Unit">Unit in words that a person reads.</param>
/// <param name="Default">Value used when the scenario says nothing.</param>
/// <param name="Min">Smallest value accepted.</param>
/// <param name="Max">Largest value accepted.</param>
/// <param name="Source">Where the default comes from.</param>
public sealed record AssumptionEntry(string Key, string Unit, double Default, double Min, double Max, string Source);
