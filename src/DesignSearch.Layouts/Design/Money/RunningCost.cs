namespace DesignSearch.Layouts.Design.Money;

/// <summary>What a layout costs after it is built.</summary>
/// <param name="ElectricityPerYear">Stand-by heater, pumps, fans and drive at the tariff, weighted over the winters.</param>
/// <param name="ReplacementsPresentValue">Parts that wear out within the years of use, discounted.</param>
/// <param name="PresentValue">Both, discounted over the years of use.</param>
public sealed record RunningCost(decimal ElectricityPerYear, decimal ReplacementsPresentValue, decimal PresentValue);
