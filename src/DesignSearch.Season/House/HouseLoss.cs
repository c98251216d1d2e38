namespace DesignSearch.Season;

/// <summary>Steady heat loss of a greenhouse.</summary>
public static class HouseLoss
{
    /// <summary>Heat an air change carries [W·h/(m³K)]: density times heat capacity of air at 5 °C and the sea, over 3600.</summary>
    public const double AirWhPerM3K = 0.355;

    /// <summary>Q = (U A + c N V) ΔT [W].</summary>
    /// <param name="uWPerM2K">U-value [W/(m²K)].</param>
    /// <param name="areaM2">Cover [m²].</param>
    /// <param name="airWhPerM3K">Heat of an air change [W·h/(m³K)].</param>
    /// <param name="airChangesPerHour">Air changes [1/h].</param>
    /// <param name="volumeM3">Air [m³].</param>
    /// <param name="differenceK">Inside minus outside [K].</param>
    public static double SteadyW(double uWPerM2K, double areaM2, double airWhPerM3K, double airChangesPerHour, double volumeM3, double differenceK) =>
        (uWPerM2K * areaM2 + airWhPerM3K * airChangesPerHour * volumeM3) * differenceK;

    /// <summary>Loss coefficient of a house [W/K] with standard films, its lining, leakage without wind and its edge; the night cover open.</summary>
    /// <param name="house">The house.</param>
    public static double CoefficientWPerK(HouseNumbers house) =>
        SteadyW(SheetResistance.ToUValue(house.CoverResistanceM2KPerW + house.LiningResistanceM2KPerW), house.CoverAreaM2, AirWhPerM3K, house.AirChangesPerHour, house.VolumeM3, 1) + house.EdgeLossWPerMK * house.PerimeterM;
}
