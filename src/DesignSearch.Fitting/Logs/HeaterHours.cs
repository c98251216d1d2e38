namespace DesignSearch.Fitting.Logs;

/// <summary>Heat of the heater hour by hour, from whatever tells it.</summary>
internal static class HeaterHours
{
    // Two ways of telling the heat should agree better [share].
    private const double Agree = 0.05;

    /// <summary>The columns that tell the heat, of the kind that is believed.</summary>
    public static IEnumerable<LogSeries> Believed(IReadOnlyList<LogSeries> series) =>
        new[] { LogRole.HeaterMeter, LogRole.HeaterWatts, LogRole.HeaterOn }.Select(r => series.Where(s => s.Role == r)).FirstOrDefault(s => s.Any()) ?? [];

    /// <summary>Heat of the hours [W]; null where no column tells it. A meter is believed before a power, a power before on and off.</summary>
    public static double[]? Of(IReadOnlyList<LogSeries> series, DateTime start, int hours, List<string> remarks)
    {
        var found = new List<(string Name, double[] Watts)>();
        foreach (var one in series.Where(s => s.Role == LogRole.HeaterMeter))
        {
            found.Add((one.Name, HourSeries.OfMeter(start, hours, one.Readings, out var resets)));
            if (resets > 0)
                remarks.Add(FormattableString.Invariant($"The meter '{one.Name}' fell back {resets} times; those hours are not known."));
        }

        foreach (var one in series.Where(s => s.Role is LogRole.HeaterWatts).Concat(series.Where(s => s.Role is LogRole.HeaterOn)))
            found.Add((one.Name, [.. HourSeries.OfState(start, hours, one.Readings).Select(w => Math.Max(0, w))]));
        if (found.Count == 0)
            return null;
        var (first, second) = (found[0], found.Count > 1 ? found[1] : found[0]);
        var both = Enumerable.Range(0, hours).Where(h => !double.IsNaN(first.Watts[h]) && !double.IsNaN(second.Watts[h])).ToArray();
        var (a, b) = (both.Sum(h => first.Watts[h]), both.Sum(h => second.Watts[h]));
        if (a > 0 && Math.Abs(b / a - 1) > Agree)
            remarks.Add(FormattableString.Invariant(
                $"'{first.Name}' and '{second.Name}' do not agree about the heat: {a / 1000:0.0} against {b / 1000:0.0} kWh. The first was believed; find out which is wrong."));
        return first.Watts;
    }
}
