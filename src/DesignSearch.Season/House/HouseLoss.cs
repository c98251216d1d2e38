using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.House;

/// <summary>Steady heat loss of a greenhouse, by the trade's split into cover and leakage.</summary>
public static class HouseLoss
{
    /// <summary>Loss coefficient of a house with all that stands in it or round it [W/K].</summary>
    /// <param name="plant">The plant.</param>
    public static double CoefficientWPerK(Installation plant)
    {
        ArgumentNullException.ThrowIfNull(plant);
        return CoefficientWPerK(plant.House) + plant.Sources.Sum(s => s.OutwardWPerK);
    }

    /// <summary>Loss coefficient with standard films, night cover open: cover, leakage, floor edge, and a back wall with the open air behind it [W/K].</summary>
    /// <param name="house">The house.</param>
    /// <param name="windMPerS">Wind at 10 m [m/s].</param>
    /// <param name="assumptions">Values for air and wind at the roof; the defaults when null.</param>
    public static double CoefficientWPerK(HouseNumbers house, double windMPerS = 0, SeasonAssumptions? assumptions = null)
    {
        assumptions ??= SeasonAssumptions.Default;
        var resistance = 1 / SheetResistance.OutsideFilmWPerM2K + 1 / SheetResistance.InsideFilmWPerM2K
            + house.CoverResistanceM2KPerW + house.LiningResistanceM2KPerW;
        var changes = house.AirChangesPerHour + house.AirChangesPerHourPerMPerS * assumptions.RoofWindFactor * windMPerS;
        return house.CoverAreaM2 / resistance
            + assumptions.AirVolumetricCapacityJPerM3K * house.VolumeM3 * changes / 3600
            + house.EdgeLossWPerMK * house.PerimeterM
            + (house.Wall.HasRoomBehind ? 0 : house.Wall.ConductanceWPerK);
    }
}
