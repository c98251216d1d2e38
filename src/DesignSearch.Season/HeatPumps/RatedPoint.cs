namespace DesignSearch.Season.HeatPumps;

/// <summary>A point of a heat pump's sheet.</summary>
/// <param name="OutdoorC">Outdoor air [°C].</param>
/// <param name="HeatW">Heat at full output [W], above 0.</param>
/// <param name="Cop">Heat over electricity, above 1.</param>
public readonly record struct RatedPoint(double OutdoorC, double HeatW, double Cop);
