using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Design.Plans;

/// <summary>What has a size at a plant: plan and elevation are drawn from it and from the lengths of the scheme's joints.</summary>
/// <param name="House">The greenhouse.</param>
/// <param name="Bodies">What stands in it and beside it.</param>
/// <param name="CollectorAboveTankM">Lower edge of the collector above the tank's water [m].</param>
public sealed record SitePlan(HouseSize House, IReadOnlyList<Body> Bodies, double CollectorAboveTankM)
{
    /// <summary>The sizes of a layout; only when it is shown, for a search has no use for them.</summary>
    /// <param name="built">The layout worked out.</param>
    /// <param name="scenario">The scenario.</param>
    public static SitePlan Of(BuiltLayout built, Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(built);
        ArgumentNullException.ThrowIfNull(scenario);
        return new(
            HouseSize.Of(scenario.Greenhouse),
            [.. built.Systems.SelectMany(s => s.Bodies(scenario))],
            scenario.Site.CollectorAboveTankM);
    }
}
