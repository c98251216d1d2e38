namespace DesignSearch.Fitting.Logs;

/// <summary>What a log does not say itself.</summary>
/// <param name="HeaterWatts">What the heater takes while it runs [W], for a column of on and off; null where the log says it.</param>
public sealed record LogOptions(double? HeaterWatts = null);
