using DesignSearch.Fitting.Logs;

namespace DesignSearch.Fitting.Nights;

/// <summary>Cuts the nights out of a log: from two hours after the sun has gone, when the house has forgotten the day's last light, until it comes.</summary>
internal static class NightSplit
{
    private const double Horizon = 90.5;
    private const int AfterSunset = 2;

    /// <summary>Fewest hours of a night that is used; further towards the poles than this there are none in summer.</summary>
    public const int LeastHours = 5;

    /// <summary>All nights, whatever is known of them.</summary>
    /// <param name="log">The log.</param>
    /// <param name="zenithDeg">The sun's zenith distance in its hours.</param>
    public static IReadOnlyList<Night> All(HouseLog log, ReadOnlySpan<double> zenithDeg)
    {
        var nights = new List<Night>();
        for (var h = 0; h < log.Hours; h++)
        {
            if (zenithDeg[h] <= Horizon)
                continue;
            var first = h;
            while (h < log.Hours && zenithDeg[h] > Horizon)
                h++;
            // One that the log begins in has no evening: what the house was before is not known.
            var from = first == 0 ? first + LeastHours : first + AfterSunset;
            if (h - from >= LeastHours)
                nights.Add(new(log.Start.AddHours(first - (first == 0 ? 12 : 0)).Date, from, h - from));
        }

        return nights;
    }

    /// <summary>True where inside, outside and heat are known through most of a night, and through the hours before it.</summary>
    public static bool IsWhole(HouseLog log, Night night)
    {
        var known = night.Hours.Count(h => !double.IsNaN(log.InsideC[h]));
        var driven = night.Hours.Count(h => !double.IsNaN(log.OutsideC[h]) && !double.IsNaN(log.HeaterW[h]));
        var before = Enumerable.Range(Math.Max(0, night.First - AfterSunset), AfterSunset).Count(h => !double.IsNaN(log.InsideC[h]));
        return known >= 0.8 * night.Count && driven == night.Count && before > 0;
    }
}
