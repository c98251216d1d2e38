namespace DesignSearch.Season.Kernel;

/// <summary>One simulated hour for a plot; temperatures are those at its end unless a mean is named, NaN for what is absent.</summary>
/// <param name="Hour">Hour of the winter, warm-up counted.</param>
/// <param name="LocalTime">Local standard time at its start.</param>
/// <param name="OutsideC">Outside air, mean [°C].</param>
/// <param name="SkyC">Sky [°C].</param>
/// <param name="AirMeanC">Air in the house, mean [°C].</param>
/// <param name="PlantsC">Air where the plants stand, mean [°C]: the house's, or that of a source that holds them.</param>
/// <param name="FloorC">Floor surface [°C].</param>
/// <param name="BarrelsC">Water barrels [°C].</param>
/// <param name="TankTopC">Top layer of the tank [°C].</param>
/// <param name="TankBottomC">Bottom layer of the tank [°C].</param>
/// <param name="CollectorC">Mean of the collector [°C].</param>
/// <param name="PumpShare">Share of the hour the collector's pump ran [0…1].</param>
/// <param name="ReleaseW">Heat from tank to house, mean [W].</param>
/// <param name="HeaterW">Stand-by heater, mean [W].</param>
/// <param name="CollectorSunWPerM2">On the collector's plane, mean [W/m²].</param>
/// <param name="HouseSunW">Sun that stayed in the house as heat, mean [W].</param>
/// <param name="Frost">True when the plants' mean air lay below the limit.</param>
/// <param name="More">Columns of the layout's sources.</param>
public readonly record struct HourRow(
    int Hour,
    DateTime LocalTime,
    double OutsideC,
    double SkyC,
    double AirMeanC,
    double PlantsC,
    double FloorC,
    double BarrelsC,
    double TankTopC,
    double TankBottomC,
    double CollectorC,
    double PumpShare,
    double ReleaseW,
    double HeaterW,
    double CollectorSunWPerM2,
    double HouseSunW,
    bool Frost,
    HourValues More)
{
    /// <summary>Electric heat of heater and sources, mean [W].</summary>
    public double ElectricHeatW
    {
        get
        {
            var more = More;
            return HeaterW + more.Columns.Where(c => c.IsElectricHeat).Sum(c => more[c]);
        }
    }
}
