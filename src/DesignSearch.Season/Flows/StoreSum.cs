namespace DesignSearch.Season.Flows;

/// <summary>What a store kept over a season.</summary>
/// <param name="Store">The store.</param>
/// <param name="Kwh">Heat in it at the end less that at the start [kWh].</param>
public readonly record struct StoreSum(Store Store, double Kwh);
