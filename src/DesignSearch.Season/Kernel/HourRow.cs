namespace DesignSearch.Season;

/// <summary>One hour of one layout: means of the hour for temperatures and powers.</summary>
/// <param name="Hour">Hour of the winter, warm-up counted, from 0.</param>
/// <param name="Time">Local standard time at its start.</param>
/// <param name="Counted">False in the warm-up.</param>
/// <param name="OutsideC">Outdoor air [°C].</param>
/// <param name="SkyC">Sky [°C].</param>
/// <param name="InsideC">Air in the house [°C].</param>
/// <param name="FloorC">Floor surface at the end of the hour [°C].</param>
/// <param name="BarrelsC">Barrels at the end of the hour [°C]; NaN without.</param>
/// <param name="TankTopC">Top layer of the tank at the end of the hour [°C]; NaN without a tank.</param>
/// <param name="TankBottomC">Its bottom layer [°C]; NaN without a tank.</param>
/// <param name="CollectorC">Collector at the end of the hour [°C]; NaN without.</param>
/// <param name="PumpShare">Share of the hour that the pump ran.</param>
/// <param name="ReleaseW">Heat released from the tank [W].</param>
/// <param name="HeaterW">Stand-by heater [W].</param>
/// <param name="SunOnPlaneWPerM2">Sun on the collector's plane [W/m²].</param>
/// <param name="SunIntoHouseW">Sun that stayed in the house as heat [W].</param>
/// <param name="NightCoverClosed">True while the night cover is closed.</param>
/// <param name="IsFrost">True when the hour's mean air lies below the limit.</param>
public readonly record struct HourRow(
    int Hour, DateTime Time, bool Counted, double OutsideC, double SkyC, double InsideC, double FloorC, double BarrelsC, double TankTopC, double TankBottomC,
    double CollectorC, double PumpShare, double ReleaseW, double HeaterW, double SunOnPlaneWPerM2, double SunIntoHouseW, bool NightCoverClosed, bool IsFrost);
