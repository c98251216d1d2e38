namespace DesignSearch.Climate.Synthesis;

/// <summary>Hours of temperature between daily extremes: a sine by day, an exponential by night; Parton and Logan, Agricultural Meteorology 23 (1981).</summary>
/// <remarks>
/// The paper has 1.86, 2.20 and −0.17 for single readings of summer days; these are fitted to the winter half's mean daily course of hour
/// means in seven open station files.
/// </remarks>
internal static class TemperatureCurve
{
    private const double PeakLag = 2.5;
    private const double NightDecay = 2.6;
    private const double LowestAfterSunrise = 0.5;

    /// <summary>Temperature at the middle of every hour [°C].</summary>
    /// <param name="days">Their extremes, sunrise and sunset.</param>
    public static double[] Hours(SyntheticDays days)
    {
        var hours = new double[days.Count * 24];
        for (var h = 0; h < hours.Length; h++)
            hours[h] = At(days, h / 24, h % 24 + 0.5) + days.Unrest[h];
        return hours;
    }

    private static double At(SyntheticDays days, int day, double t)
    {
        if (t < days.Sunrise[day] + LowestAfterSunrise)
            return Night(days, Math.Max(0, day - 1), day, t + 24);
        if (t > days.Sunset[day])
            return Night(days, day, Math.Min(days.Count - 1, day + 1), t);
        return Day(days, day, t);
    }

    private static double Day(SyntheticDays days, int day, double t)
    {
        var rise = days.Sunrise[day] + LowestAfterSunrise;
        var length = days.Sunset[day] - days.Sunrise[day];
        return days.Low[day] + (days.High[day] - days.Low[day]) * Math.Sin(Math.PI * (t - rise) / (length + 2 * PeakLag - LowestAfterSunrise));
    }

    private static double Night(SyntheticDays days, int evening, int morning, double t)
    {
        var atSunset = Day(days, evening, days.Sunset[evening]);
        var length = 24 - (days.Sunset[evening] - days.Sunrise[evening]) + LowestAfterSunrise;
        var passed = Math.Clamp((t - days.Sunset[evening]) / length, 0, 1);
        var end = Math.Exp(-NightDecay);
        return days.Low[morning] + (atSunset - days.Low[morning]) * (Math.Exp(-NightDecay * passed) - end) / (1 - end);
    }
}
