namespace DesignSearch.Layouts.Design.Money;

/// <summary>What is bought or hired again within the years of use.</summary>
/// <param name="Name">The part.</param>
/// <param name="EveryYears">Its life [years].</param>
/// <param name="Price">What it costs each time, all of it.</param>
public sealed record Wear(string Name, double EveryYears, decimal Price)
{
    /// <summary>The same spread over its life, interest left out.</summary>
    public double CostPerYear => (double)Price / EveryYears;
}
