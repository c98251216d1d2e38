namespace DesignSearch.Fitting.Logs;

/// <summary>Hour means of readings at any times.</summary>
internal static class HourSeries
{
    // A reading speaks for so long at most, where the next one is missing [h]: some write a switch only when it turns, and read a meter at dusk and dawn.
    private const double LevelGapHours = 1.5;
    private const double StateGapHours = 12;
    private const double MeterGapHours = 16;
    private const double LeastKnown = 0.7;

    /// <summary>Of a level that runs straight from reading to reading.</summary>
    /// <param name="start">Start of hour 0.</param>
    /// <param name="hours">How many.</param>
    /// <param name="readings">Readings by their times, rising.</param>
    public static double[] OfLevel(DateTime start, int hours, IReadOnlyList<(DateTime At, double Value)> readings) =>
        Mean(start, hours, readings, LevelGapHours, (a, b, x) => a + (b - a) * x);

    /// <summary>Of something that stays as it was read until it is read again.</summary>
    /// <inheritdoc cref="OfLevel"/>
    public static double[] OfState(DateTime start, int hours, IReadOnlyList<(DateTime At, double Value)> readings) =>
        Mean(start, hours, readings, StateGapHours, (a, _, _) => a);

    /// <summary>Mean power of the hours by a meter that only rises [W].</summary>
    /// <param name="start">Start of hour 0.</param>
    /// <param name="hours">How many.</param>
    /// <param name="readings">Its readings [kWh] by their times, rising.</param>
    /// <param name="resets">How often it fell back.</param>
    public static double[] OfMeter(DateTime start, int hours, IReadOnlyList<(DateTime At, double Value)> readings, out int resets)
    {
        var power = new List<(DateTime At, double Value)>();
        resets = 0;
        for (var i = 1; i < readings.Count; i++)
        {
            var used = readings[i].Value - readings[i - 1].Value;
            var over = (readings[i].At - readings[i - 1].At).TotalHours;
            resets += used < 0 ? 1 : 0;
            if (over > 0)
                power.Add((readings[i - 1].At, used < 0 || over > MeterGapHours ? double.NaN : 1000 * used / over));
        }

        if (readings.Count > 0)
            power.Add((readings[^1].At, double.NaN));
        return Mean(start, hours, power, MeterGapHours, (a, _, _) => a);
    }

    private static double[] Mean(DateTime start, int hours, IReadOnlyList<(DateTime At, double Value)> readings, double mostHours, Func<double, double, double, double> at)
    {
        var (sum, known) = (new double[hours], new double[hours]);
        for (var i = 1; i < readings.Count; i++)
        {
            var (from, to) = ((readings[i - 1].At - start).TotalHours, (readings[i].At - start).TotalHours);
            var (a, b) = (readings[i - 1].Value, readings[i].Value);
            if (double.IsNaN(a) || to <= from || to - from > mostHours)
                continue;
            for (var h = Math.Max(0, (int)Math.Floor(from)); h < Math.Min(hours, to); h++)
            {
                var (low, high) = (Math.Max(h, from), Math.Min(h + 1, to));
                if (high <= low)
                    continue;
                sum[h] += at(a, b, ((low + high) / 2 - from) / (to - from)) * (high - low);
                known[h] += high - low;
            }
        }

        return [.. sum.Select((s, h) => known[h] >= LeastKnown ? s / known[h] : double.NaN)];
    }
}
