namespace DesignSearch.Season;

/// <summary>One assumption of the model as a scenario may set it.</summary>
/// <param name="Key">Key in [assumptions].</param>
/// <param name="Unit">Unit.</param>
/// <param name="Default">Value when the scenario is silent.</param>
/// <param name="Min">Least value allowed.</param>
/// <param name="Max">Greatest value allowed.</param>
/// <param name="Source">Where the default comes from.</param>
public sealed record AssumptionEntry(string Key, string Unit, double Default, double Min, double Max, string Source);
