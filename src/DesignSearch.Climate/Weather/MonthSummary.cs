namespace DesignSearch.Climate.Weather;

/// <summary>One month of a weather record.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="MeanC">Mean air temperature [°C].</param>
/// <param name="LowestC">Lowest temperature as recorded [°C].</param>
/// <param name="GhiKwhPerM2Day">Mean daily global irradiation on the level [kWh/m²].</param>
/// <param name="FrostHours">Hours below 0 °C as recorded [h].</param>
/// <param name="MeanWindMPerS">Mean wind at 10 m [m/s].</param>
public sealed record MonthSummary(int Month, double MeanC, double LowestC, double GhiKwhPerM2Day, double FrostHours, double MeanWindMPerS);
