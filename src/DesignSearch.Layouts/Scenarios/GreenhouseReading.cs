using DesignSearch.Files.Toml;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads [greenhouse].</summary>
internal static class GreenhouseReading
{
    public static Greenhouse Read(TomlTable? table, SystemSet systems)
    {
        if (table is null)
            return new Greenhouse
            {
                LengthM = 4,
                WidthM = 3,
                EavesM = 2,
                RidgeM = 3,
                RidgeAzimuthDeg = 90,
                CoverUWPerM2K = 4,
                CoverLight = 0.8,
                CoverLayers = 2,
                AirChangesPerHour = 1,
                AirChangesPerHourPerMPerS = 0.1,
                EdgeLossWPerMK = 1,
                VentAreaM2 = 0.5,
                FrostLimitC = 3,
            };
        var eaves = table.Number("eaves_m", 0.3, 6, "m");
        var house = new Greenhouse
        {
            LengthM = table.Number("length_m", 1, 60, "m"),
            WidthM = table.Number("width_m", 1, 20, "m"),
            EavesM = eaves,
            RidgeM = table.Number("ridge_m", 0.5, 10, "m"),
            RidgeAzimuthDeg = table.Number("ridge_azimuth_deg", 0, 360, "° clockwise from true north", 90),
            CoverUWPerM2K = table.Number("cover_u_w_per_m2k", 0.5, 8, "W/(m²K), as the maker states it"),
            CoverLight = table.Number("cover_light", 0.2, 0.95, "as a share"),
            CoverLayers = table.Whole("cover_layers", 1, 4, 1),
            AirChangesPerHour = table.Number("air_changes_per_hour", 0.1, 20, "per hour", 1),
            AirChangesPerHourPerMPerS = table.Number("air_changes_per_hour_per_m_per_s", 0, 5, "per hour for each m/s of wind", 0.15),
            EdgeLossWPerMK = table.Number("edge_loss_w_per_mk", 0, 3, "W/(m·K)", 1.26),
            VentAreaM2 = table.Number("vent_area_m2", 0, 50, "m²", 0.5),
            FrostLimitC = table.Number("frost_limit_c", -10, 20, "°C", 3),
        };
        if (house.RidgeM <= eaves)
            table.FaultAt("ridge_m", FormattableString.Invariant($"{house.RidgeM}"), "a ridge above the eaves");
        var wishes = systems.All.Select(s => s.ReadWish(table, house)).OfType<SystemWish>().ToList();
        table.ReportUnknown();
        return house with { Wishes = wishes };
    }
}
