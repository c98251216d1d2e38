namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>One hour of a week, rounded for a picture.</summary>
/// <param name="OutsideC">Outdoor air, mean [°C].</param>
/// <param name="AirC">The plants' air, mean [°C]: the house's, or that of the system that holds them.</param>
/// <param name="BareAirC">Air in the bare house, mean [°C].</param>
/// <param name="TankC">Top of the tank at the end of the hour [°C]; NaN without one.</param>
/// <param name="SunWPerM2">Sun on the level, mean [W/m²].</param>
/// <param name="PumpShare">Share of the hour the collector's pump ran [0…1].</param>
/// <param name="HeaterW">Current that is bought to heat, a heat pump's included, mean [W].</param>
public readonly record struct WeekHour(double OutsideC, double AirC, double BareAirC, double TankC, double SunWPerM2, double PumpShare, double HeaterW);
