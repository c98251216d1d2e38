using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Barrels;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Small;
using DesignSearch.Season.Barrels;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>Water barrels.</summary>
internal static class StoreBuilding
{
    // Barrels are filled to the neck, and stand so that the sun strikes their upright side (estimates, no source).
    private const double Filled = 0.97;
    private const double SunlitShareOfSide = 0.5;
    private const double MostSun = 0.35;

    /// <summary>Floor under the barrels [m²].</summary>
    public static double FloorM2(Catalogue parts, Layout layout) =>
        parts.TryFind<Barrel>(layout["barrel"].Id, out var barrel) ? layout["barrel_count"].Number * barrel.DiameterM * barrel.DiameterM : 0;

    public static BarrelNumbers Build(Scenario scenario, Layout layout, Needs needs)
    {
        if (!needs.Catalogue.TryFind<Barrel>(layout["barrel"].Id, out var barrel))
            return BarrelNumbers.None;
        var count = layout["barrel_count"].Number;
        needs.Add(barrel, count, "barrels", "Takes up the day's warmth and gives it back at night without any control.", "where the low sun strikes them, away from the door");
        needs.Small(SmallPartRole.Lid, count, "barrels", "Children and animals drown in open water.", "on every barrel");
        needs.Small(SmallPartRole.WaterTreatment, 1, "barrels", "Against algae.", "in the barrels");
        var side = Math.PI * barrel.DiameterM * barrel.HeightM;
        var top = Math.PI / 4 * barrel.DiameterM * barrel.DiameterM;
        var sun = Math.Min(MostSun, count * barrel.DiameterM * barrel.HeightM * SunlitShareOfSide / scenario.Greenhouse.FloorM2);
        return new BarrelNumbers(count * barrel.VolumeL * Filled, count * (side + top), sun);
    }
}
