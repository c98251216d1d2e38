using System.Globalization;
using DesignSearch.Climate;
using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Parts.Mechanics;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads [site].</summary>
internal static class SiteReading
{
    /// <summary>Heights of a horizon.</summary>
    public const int Directions = 8;
    public const string HorizonUnit = "° above level, from north clockwise every 45°";

    private const double NearDeg = 1.5;

    // In the order of SnowCare.
    private static readonly string[] SnowWords = ["none", "brushed", "left"];
    private static readonly string[] MainsKeys = ["mains_at_greenhouse", "mains_cable_m", "mains_limit_a", "mains_loop_ohm"];

    /// <summary>The place [site] names, before its values are judged; null when it names none.</summary>
    public static Place? Given(TomlTable? table, string name) =>
        GivenNumber(table, "latitude_deg") is { } latitude && GivenNumber(table, "longitude_deg") is { } longitude
            ? new Place(name, latitude, longitude, GivenNumber(table, "elevation_m") ?? 0, GivenNumber(table, "zone_hours") ?? Math.Round(longitude / 15))
            : null;

    /// <summary>A number as it stands, or null.</summary>
    public static double? GivenNumber(TomlTable? table, string key) => table?.Find(key) is { Kind: TomlKind.Whole or TomlKind.Real } value ? value.Number : null;

    public static (Place Place, SiteLimits Site) Read(TomlTable? table, string name, Place? recorded, bool mayDiffer)
    {
        if (table is null)
            return (recorded ?? new Place(name, 45, 0, 0, 0), new SiteLimits(0, 0, 0, true, 0, 0, 0, 0, []));
        var latitude = table.Number("latitude_deg", -66, 66, "°, south negative", recorded?.LatitudeDeg);
        var longitude = table.Number("longitude_deg", -180, 180, "°, west negative", recorded?.LongitudeDeg);
        var place = new Place(
            table.Text("place", 120, name),
            latitude,
            longitude,
            table.Number("elevation_m", -400, 5000, "m", recorded?.ElevationM ?? 0),
            table.Number("zone_hours", -12, 14, "h, standard time minus UTC", recorded?.ZoneHours ?? Math.Round(longitude / 15)));
        if (recorded is not null && !mayDiffer && (Math.Abs(recorded.LatitudeDeg - latitude) > NearDeg || Math.Abs(recorded.LongitudeDeg - longitude) > NearDeg))
            table.FaultAt(
                "latitude_deg",
                FormattableString.Invariant($"{latitude}, {longitude}"),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a place near that of the weather file ({recorded.LatitudeDeg}, {recorded.LongitudeDeg}); leave both out to use "
                        + $"the file's own"));
        if (recorded is not null)
            place = recorded with { Name = place.Name };
        var site = new SiteLimits(
            table.Number("pipe_run_m", 0, 200, "m"),
            table.Number("collector_above_tank_m", -20, 20, "m", 0),
            table.Number("mains_cable_m", 0, 500, "m", 0),
            table.Flag("mains_at_greenhouse", false),
            table.Number("collector_space_m2", 0, 500, "m²"),
            table.Number("store_floor_m2", 0, 200, "m²"),
            table.Number("working_wind_m_per_s", 0, 40, "m/s", 12),
            table.Number("design_wind_m_per_s", 5, 80, "m/s", 30),
            table.Numbers("horizon_deg", Directions, 0, 80, HorizonUnit) ?? [])
        {
            MainsLimitA = table.Has("mains_limit_a") ? table.Number("mains_limit_a", 1, 200, "A") : null,
            FloorBearsKgPerM2 = table.Number("floor_bears_kg_per_m2", 50, 20000, "kg/m²", SiteLimits.UsualFloorKgPerM2),
            MainsLoopOhm = table.Number("mains_loop_ohm", 0.02, 20, "Ω", SiteLimits.UsualLoopOhm),
            AnchorHoldsN = table.Has("anchor_holds_n") ? table.Number("anchor_holds_n", 50, 50000, "N") : null,
            Terrain = TerrainOf(table),
            Snow = table.Has("snow") ? (SnowCare)Array.IndexOf(SnowWords, table.Word("snow", SnowWords)) : null,
            FrostDepthM = table.Has("frost_depth_m") ? table.Number("frost_depth_m", 0, 3, "m") : null,
            HeapPipeM = table.Number("heap_pipe_m", 1, 100, "m", SiteLimits.UsualHeapPipeM),
            HasNoMains = table.Flag(NoMains.Key, false),
        };
        if (site.HasNoMains)
            NoMains.Refuse(table, MainsKeys);
        table.ReportUnknown();
        return (place, site);
    }

    private static WindTerrain? TerrainOf(TomlTable table)
    {
        string[] words = ["sea", "flat", "fields", "suburb", "town"];
        return table.Has("wind_terrain") ? (WindTerrain)Array.IndexOf(words, table.Word("wind_terrain", words)) : null;
    }
}
