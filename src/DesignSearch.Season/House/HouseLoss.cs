using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.House;

/// <summary>Steady heat loss of a greenhouse, by the trade's split into cover and leakage.</summary>
public static class HouseLoss
{
    /// <summary>Loss of cover and leaking air [W].</summary>
    /// <param name="uWPerM2K">U-value of the cover [W/(m²K)].</param>
    /// <param name="coverM2">Cover [m²].</param>
    /// <param name="volumeM3">Enclosed air [m³].</param>
    /// <param name="airChangesPerHour">Air changes [1/h].</param>
    /// <param name="differenceK">Inside minus outside [K].</param>
    /// <param name="airWhPerM3K">Heat in a cubic metre of air [W h/(m³K)].</param>
    public static double SteadyW(double uWPerM2K, double coverM2, double volumeM3, double airChangesPerHour, double differenceK, double airWhPerM3K = 0.33) =>
        (uWPerM2K * coverM2 + airWhPerM3K * volumeM3 * airChangesPerHour) * differenceK;

    /// <summary>Loss coefficient with standard films, night cover open: cover, leakage and floor edge [W/K].</summary>
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
            + house.EdgeLossWPerMK * house.PerimeterM;
    }
}
