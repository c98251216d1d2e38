using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Heaters;
using DesignSearch.Season.Heaters;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>A layout half worked out: enough for the checks that need neither list nor supply.</summary>
/// <param name="Layout">The choices.</param>
/// <param name="Needs">The list, still empty.</param>
/// <param name="Solar">The collector loop; null without.</param>
/// <param name="StoreFloorM2">Floor under tank and barrels [m²].</param>
/// <param name="Standby">The stand-by heater; null without.</param>
/// <param name="Heater">Its numbers.</param>
internal sealed record BegunLayout(Layout Layout, Needs Needs, SolarLoop? Solar, double StoreFloorM2, Heater? Standby, HeaterNumbers Heater)
{
    /// <summary>True when it is certain already that the catalogue lacks a part.</summary>
    public bool LacksParts => Solar is { } solar && (solar.ReleasePump is null || (solar.Collector.IsGlazed && solar.FirstMetres is null));
}
