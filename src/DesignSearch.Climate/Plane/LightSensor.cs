namespace DesignSearch.Climate.Plane;

/// <summary>The light switch that tells a turning mount when the day begins and ends.</summary>
/// <param name="OnWPerM2">Brighter than this on the level: the day begins [W/m²].</param>
/// <param name="OffWPerM2">Darker than this: the day is over [W/m²], below the first.</param>
/// <remarks>The usual levels are common practice, no source.</remarks>
public sealed record LightSensor(double OnWPerM2 = 30, double OffWPerM2 = 15);
