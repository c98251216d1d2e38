using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Systems.Supply.OffGrid;

/// <summary>What a panel and a battery are sized by, beside the devices.</summary>
/// <param name="Winters">Sun and cold of the design winters.</param>
/// <param name="Years">Years of use, over which parts are compared.</param>
/// <param name="StormPa">Pressure of the storm's gust at the panels [Pa].</param>
internal sealed record OffGridSite(DarkWinters Winters, int Years, double StormPa)
{
    // Height of the panels' middle above the ground (own choice) [m].
    private const double PanelsM = 2;

    /// <summary>That of a scenario.</summary>
    public static OffGridSite Of(Scenario scenario) =>
        new(DarkWinters.Of(scenario), scenario.Money.Years, scenario.Site.StormPa(PanelsM));
}
