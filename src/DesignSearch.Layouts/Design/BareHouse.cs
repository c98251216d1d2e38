using System.Runtime.CompilerServices;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Design;

/// <summary>The house as it stands, nothing added.</summary>
public static class BareHouse
{
    // An open vent exchanges some 0.25 m/s through its area (common practice, no source): 0.25 m/s × 1200 J/(m³K).
    private const double VentWPerM2K = 300;

    // A search asks for the same house many thousand times, and its areas are sums over its faces.
    private static readonly ConditionalWeakTable<Greenhouse, HouseNumbers> Known = [];

    /// <summary>Its numbers for the season model; worked out once for each house.</summary>
    public static HouseNumbers Numbers(Greenhouse house) => Known.GetValue(house, Of);

    private static HouseNumbers Of(Greenhouse house) =>
        new()
        {
            FrostLimitC = house.FrostLimitC,
            CoverAreaM2 = house.CoverM2,
            CoverResistanceM2KPerW = SheetResistance.FromUValue(house.CoverUWPerM2K),
            SkyViewFactor = house.SkyViewFactor,
            FloorAreaM2 = house.FloorM2,
            VolumeM3 = house.VolumeM3,
            PerimeterM = house.PerimeterM,
            EdgeLossWPerMK = house.EdgeLossWPerMK,
            AirChangesPerHour = house.AirChangesPerHour,
            AirChangesPerHourPerMPerS = house.AirChangesPerHourPerMPerS,
            VentWPerK = VentWPerM2K * house.VentAreaM2,
        };
}
