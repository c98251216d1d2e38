namespace DesignSearch.Climate.Winters;

/// <summary>What a builder knows of one month.</summary>
/// <param name="MeanC">Mean air temperature [°C].</param>
/// <param name="MeanDailyLowC">Mean of the daily lowest temperatures [°C], at least 1 K below the mean.</param>
/// <param name="GhiKwhPerM2Day">Mean daily global irradiation on the level [kWh/m²].</param>
/// <param name="WindMPerS">Mean wind at 10 m in the open [m/s].</param>
/// <param name="HumidityPercent">Mean relative humidity [%].</param>
public sealed record MonthMeans(double MeanC, double MeanDailyLowC, double GhiKwhPerM2Day, double WindMPerS, double HumidityPercent)
{
    /// <summary>Day-to-day standard deviation of the daily lowest temperature [K]; none: the usual figure of the climate's character.</summary>
    public double? DailyLowSdK { get; init; }

    /// <summary>Day-to-day standard deviation of the daily highest temperature [K]; none: the usual figure.</summary>
    public double? DailyHighSdK { get; init; }
}
