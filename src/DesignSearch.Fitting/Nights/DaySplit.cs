using DesignSearch.Fitting.Logs;

namespace DesignSearch.Fitting.Nights;

/// <summary>Cuts the days out of a log: from an hour after the sun has come until it goes.</summary>
internal static class DaySplit
{
    private const double Horizon = 90;

    /// <summary>Days that are known throughout.</summary>
    /// <param name="log">The log.</param>
    /// <param name="zenithDeg">The sun's zenith distance in its hours.</param>
    public static IReadOnlyList<Night> Whole(HouseLog log, ReadOnlySpan<double> zenithDeg) =>
        [.. All(log, zenithDeg).Where(d => d.Hours.All(h => !double.IsNaN(log.InsideC[h]) && !double.IsNaN(log.OutsideC[h]) && !double.IsNaN(log.HeaterW[h])))];

    /// <summary>All days that the log holds from morning to evening.</summary>
    public static IReadOnlyList<Night> All(HouseLog log, ReadOnlySpan<double> zenithDeg)
    {
        var days = new List<Night>();
        for (var h = 1; h < log.Hours; h++)
        {
            if (zenithDeg[h] >= Horizon || zenithDeg[h - 1] < Horizon)
                continue;
            var first = h;
            while (h < log.Hours && zenithDeg[h] < Horizon)
                h++;
            if (h < log.Hours && h - first > 4)
                days.Add(new(log.Start.AddHours(first).Date, first + 1, h - first - 1));
        }

        return days;
    }
}
