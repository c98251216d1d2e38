namespace DesignSearch.Season.Kernel;

/// <summary>One simulated hour for a plot; temperatures are those at its end unless a mean is named, NaN for what is absent.</summary>
/// <param name="Hour">Hour of the winter, warm-up counted.</param>
/// <param name="LocalTime">Local standard time at its start.</param>
/// <param name="OutsideC">Outside air, mean [°C].</param>
/// <param name="SkyC">Sky [°C].</param>
/// <param name="AirMeanC">Air in the house, mean [°C].</param>
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
/// <param name="Frost">True when the plants' mean air lay below the limit: the bench's where there is one.</param>
/// <param name="CompostC">Core of the compost heap [°C].</param>
/// <param name="BenchC">Bench under its fleece, mean [°C].</param>
/// <param name="BenchW">Its electric heat, mean [W].</param>
public readonly record struct HourRow(
    int Hour,
    DateTime LocalTime,
    double OutsideC,
    double SkyC,
    double AirMeanC,
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
    double CompostC = double.NaN,
    double BenchC = double.NaN,
    double BenchW = 0);
