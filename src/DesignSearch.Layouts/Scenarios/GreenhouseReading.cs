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
        var shape = ShapeReading.Of(table);
        var (cover, isOfHouse, longWave) = CoverReading.Whole(table);
        var house = new Greenhouse
        {
            Shape = shape.Shape,
            LengthM = shape.LengthM,
            WidthM = shape.WidthM,
            EavesM = shape.EavesM,
            RidgeM = shape.RidgeM,
            RidgeAzimuthDeg = shape.RidgeAzimuthDeg,
            BackWall = shape.BackWall,
            BaseWall = shape.BaseWall,
            FloorBelowM = shape.FloorBelowM,
            Door = shape.Door,
            CoverUWPerM2K = cover.UWPerM2K,
            CoverUIsOfHouse = isOfHouse,
            CoverLongWave = longWave,
            Contents = ContentsReading.Of(table),
            CoverLight = cover.Light,
            CoverLayers = cover.Layers,
            HorizonDeg = table.Numbers("horizon_deg", SiteReading.Directions, 0, 80, SiteReading.HorizonUnit) ?? [],
            RoofSheet = CoverReading.Of(table, "roof", cover),
            WallSheet = CoverReading.Of(table, "side", cover),
            EndSheet = CoverReading.Of(table, "end", cover),
            AirChangesPerHour = table.Number("air_changes_per_hour", 0.1, 20, "per hour", 1),
            AirChangesPerHourPerMPerS = table.Number("air_changes_per_hour_per_m_per_s", 0, 5, "per hour for each m/s of wind", 0.15),
            EdgeLossWPerMK = table.Number("edge_loss_w_per_mk", 0, 3, "W/(m·K)", 1.26),
            VentAreaM2 = table.Number("vent_area_m2", 0, 50, "m²", 0.5),
            FrostLimitC = table.Number("frost_limit_c", -10, 20, "°C", 3),
        };
        var wishes = systems.All.Select(s => s.ReadWish(table, house)).OfType<SystemWish>().ToList();
        table.ReportUnknown();
        return house with { Wishes = wishes };
    }
}
