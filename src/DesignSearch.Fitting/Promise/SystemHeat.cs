namespace DesignSearch.Fitting.Promise;

/// <summary>Heat that one system gave in the nights, against what was promised of it.</summary>
/// <param name="Name">The log's column.</param>
/// <param name="PromisedKwh">What was promised [kWh].</param>
/// <param name="CameKwh">What came [kWh].</param>
public sealed record SystemHeat(string Name, double PromisedKwh, double CameKwh);
