using DesignSearch.Parts.Money;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>What money is limited by and counted with.</summary>
/// <param name="Currency">A word for display.</param>
/// <param name="Budget">Limit of the build price.</param>
/// <param name="Years">Years of use that running cost is counted over.</param>
/// <param name="Interest">Interest per year the builder counts with [0…1].</param>
/// <param name="TariffPerKwh">Price of a kilowatt-hour; by day where there is a night tariff.</param>
/// <param name="BuildHours">Limit of the hours of own work; null without one.</param>
public sealed record MoneyTerms(string Currency, decimal Budget, int Years, double Interest, decimal TariffPerKwh, double? BuildHours)
{
    /// <summary>Which of the catalogue's prices are paid.</summary>
    public PriceLevel Prices { get; init; }

    /// <summary>The cheaper tariff of the night; null where there is only one.</summary>
    public NightTariff? Night { get; init; }

    /// <summary>What an hour of own work is counted at; 0 where it is not counted.</summary>
    public decimal LabourRatePerHour { get; init; }

    /// <summary>What an hour of a licensed electrician costs; null for the catalogue's price.</summary>
    public decimal? LicensedRatePerHour { get; init; }
}
