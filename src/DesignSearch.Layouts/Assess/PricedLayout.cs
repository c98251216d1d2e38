using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Money;

namespace DesignSearch.Layouts.Assess;

/// <summary>A layout worked out and priced, not yet simulated.</summary>
/// <param name="Built">The layout worked out.</param>
/// <param name="BuildPrice">Sum of its bill.</param>
/// <param name="Replacements">Present value of what must be bought again.</param>
/// <param name="LabourHours">Hours of own work.</param>
public sealed record PricedLayout(BuiltLayout Built, decimal BuildPrice, decimal Replacements, double LabourHours)
{
    /// <summary>Upkeep of a year.</summary>
    public decimal UpkeepPerYear { get; init; }

    /// <summary>Life cost without any electricity.</summary>
    /// <param name="terms">Interest, years, rate of own work.</param>
    public decimal LifeCostWithoutCurrent(MoneyTerms terms) =>
        BuildPrice + Replacements + Pricer.OverTheYears(UpkeepPerYear, terms) + Pricer.Labour(LabourHours, terms);
}
