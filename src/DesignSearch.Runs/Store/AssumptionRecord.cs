namespace DesignSearch.Runs.Store;

/// <summary>One assumption of the model.</summary>
/// <param name="Key">Its key in the scenario's [assumptions].</param>
/// <param name="Value">Value used.</param>
/// <param name="Unit">Unit.</param>
/// <param name="IsDefault">True when the scenario left it alone.</param>
/// <param name="Source">Where the default comes from.</param>
public sealed record AssumptionRecord(string Key, double Value, string Unit, bool IsDefault, string Source);
