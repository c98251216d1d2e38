namespace DesignSearch.Climate.Winters;

/// <summary>One day of a winter, for a picture.</summary>
/// <param name="Date">The day; its year is nominal for typical and made winters.</param>
/// <param name="LowC">Lowest hour mean [°C].</param>
/// <param name="MeanC">Mean [°C].</param>
/// <param name="HighC">Highest hour mean [°C].</param>
/// <param name="SunKwhPerM2">Global irradiation on the level [kWh/m²].</param>
/// <param name="FrostHours">Hours below 0 °C.</param>
public sealed record WinterDay(DateOnly Date, double LowC, double MeanC, double HighC, double SunKwhPerM2, int FrostHours);
