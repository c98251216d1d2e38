namespace DesignSearch.Layouts.Design.Money;

/// <summary>What a layout costs after it is built.</summary>
/// <param name="ElectricityPerYear">Stand-by heater, pumps, fans and drive at the tariff, weighted over the winters.</param>
/// <param name="ReplacementsPresentValue">Parts that wear out within the years of use, discounted.</param>
/// <param name="PresentValue">Both and upkeep, discounted over the years of use.</param>
public sealed record RunningCost(decimal ElectricityPerYear, decimal ReplacementsPresentValue, decimal PresentValue)
{
    /// <summary>Upkeep of a year: licensed hours, and own hours where the builder gave a rate.</summary>
    public decimal UpkeepPerYear { get; init; }

    /// <summary>The same over the years of use, discounted.</summary>
    public decimal UpkeepPresentValue { get; init; }
}
