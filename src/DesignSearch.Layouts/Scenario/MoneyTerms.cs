namespace DesignSearch.Layouts;

/// <summary>What money is limited by and counted with.</summary>
/// <param name="Currency">A word for display.</param>
/// <param name="Budget">Limit of the build price.</param>
/// <param name="Years">Years of use that running cost is counted over.</param>
/// <param name="Interest">Interest per year the builder counts with [0…1].</param>
/// <param name="TariffPerKwh">Price of a kilowatt-hour.</param>
/// <param name="BuildHours">Limit of the hours of own work; null without one.</param>
public sealed record MoneyTerms(string Currency, decimal Budget, int Years, double Interest, decimal TariffPerKwh, double? BuildHours);
