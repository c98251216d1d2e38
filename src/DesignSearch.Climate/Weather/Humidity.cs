namespace DesignSearch.Climate.Weather;

/// <summary>Moist air by the Magnus formula with the constants of Alduchov and Eskridge (1996).</summary>
internal static class Humidity
{
    /// <summary>Dew point [°C] from air [°C] and relative humidity [%], never above the air.</summary>
    public static double DewPointC(double airC, double relativePercent)
    {
        var g = Math.Log(Math.Clamp(relativePercent, 1, 100) / 100) + 17.625 * airC / (243.04 + airC);
        return Math.Min(airC, 243.04 * g / (17.625 - g));
    }

    /// <summary>Relative humidity [%] from air and dew point [°C].</summary>
    public static double RelativePercent(double airC, double dewPointC) =>
        100 * Math.Exp(17.625 * dewPointC / (243.04 + dewPointC) - 17.625 * airC / (243.04 + airC));
}
