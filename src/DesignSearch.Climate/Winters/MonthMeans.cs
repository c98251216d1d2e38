namespace DesignSearch.Climate.Winters;

/// <summary>What a builder knows of one month.</summary>
/// <param name="MeanC">Mean air temperature [°C].</param>
/// <param name="MeanDailyLowC">Mean of the daily lowest temperatures [°C] as a minimum thermometer shows them, below the mean.</param>
/// <param name="GhiKwhPerM2Day">Mean daily global irradiation on the level [kWh/m²].</param>
/// <param name="WindMPerS">Mean wind at 10 m in the open [m/s].</param>
/// <param name="HumidityPercent">Mean relative humidity [%].</param>
public sealed record MonthMeans(double MeanC, double MeanDailyLowC, double GhiKwhPerM2Day, double WindMPerS, double HumidityPercent)
{
    // The lowest hour is not as low as its lowest moment: by 0.02 to 0.06 of the way up to the mean in seven open station files.
    private const double HourShare = 0.05;

    /// <summary>Mean of the daily lowest hour means [°C]: a little above the daily lowest temperature.</summary>
    public double LowestHourC => MeanDailyLowC + HourShare * (MeanC - MeanDailyLowC);

    /// <summary>Day-to-day standard deviation of the daily mean [K]; none: from stations of like climate.</summary>
    public double? DailyMeanSdK { get; init; }

    /// <summary>Day-to-day standard deviation of the daily lowest [K]; none: from stations of like climate.</summary>
    public double? DailyLowSdK { get; init; }

    /// <summary>The same from figures of which the daily low is that of hour means.</summary>
    /// <param name="meanC">Mean air temperature [°C].</param>
    /// <param name="lowestHourC">Mean of the daily lowest hour means [°C].</param>
    /// <param name="ghiKwhPerM2Day">Mean daily global irradiation on the level [kWh/m²].</param>
    /// <param name="windMPerS">Mean wind at 10 m in the open [m/s].</param>
    /// <param name="humidityPercent">Mean relative humidity [%].</param>
    public static MonthMeans OfHourMeans(double meanC, double lowestHourC, double ghiKwhPerM2Day, double windMPerS, double humidityPercent) =>
        new(meanC, (lowestHourC - HourShare * meanC) / (1 - HourShare), ghiKwhPerM2Day, windMPerS, humidityPercent);
}
