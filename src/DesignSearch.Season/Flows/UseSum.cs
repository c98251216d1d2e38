namespace DesignSearch.Season.Flows;

/// <summary>One use of electricity over a season.</summary>
/// <param name="Use">The use.</param>
/// <param name="Kwh">Electricity [kWh].</param>
/// <param name="CheapKwh">The part of it that falls into the hours of the cheap tariff [kWh].</param>
public readonly record struct UseSum(Use Use, double Kwh, double CheapKwh = 0);
