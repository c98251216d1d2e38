using DesignSearch.Fitting.Words;
using MathNet.Numerics.Statistics;

namespace DesignSearch.Fitting.Logs;

/// <summary>
/// Holds the clocks of a log's tables against each other: the air inside must rise in the hour in which the heater comes on, and about when the air outside does. Each
/// table is held against that of the inside, which is held against the sun afterwards.
/// </summary>
internal static class ClockPairs
{
    // Further apart, what belongs to the morning of one is taken for the evening of the other [h].
    private const int MostHours = 4;

    // An hour hardly matters, and outside air follows the sun sooner or later by as much [h].
    private const int OffHours = 2;

    // So alike they must be when moved, and so much more than before: a heater is, of the same hour, by 0.14 to 0.83, air outside by 0.1 to 0.7 (twelve drawn houses).
    private const double LeastLike = 0.25;
    private const double LeastGain = 0.15;
    private const int LeastHours = 48;

    /// <summary>The log with every table by the clock of the inside's.</summary>
    /// <param name="log">The log.</param>
    /// <param name="says">Receives what is said of it.</param>
    public static HouseLog SetRight(HouseLog log, List<string> says)
    {
        var (inside, outside, heater) = log.Clocks;
        if (log.HasHeater && heater.Length > 0 && inside.Length > 0 && heater != inside && Late(log.InsideC, log.HeaterW) is var h && h != 0)
        {
            says.Add(ClockWords.Apart(heater, inside, h));
            log = log with { HeaterW = Moved(log.HeaterW, h) };
        }

        if (outside.Length > 0 && inside.Length > 0 && outside != inside && Late(log.InsideC, log.OutsideC) is var o && o != 0)
        {
            says.Add(ClockWords.Apart(outside, inside, o));
            log = log with { OutsideC = Moved(log.OutsideC, o) };
        }

        return log;
    }

    /// <summary>By how many hours a series stands late against another; 0 where they go together, or where it cannot be told.</summary>
    private static int Late(double[] air, double[] other)
    {
        var like = Enumerable.Range(-MostHours, 2 * MostHours + 1).Select(l => Like(air, other, l)).ToArray();
        var best = Array.IndexOf(like, like.Max());
        var late = best - MostHours;
        // At the end of the range it may be anything.
        return Math.Abs(late) >= OffHours && Math.Abs(late) < MostHours && like[best] >= LeastLike && like[best] >= like[MostHours] + LeastGain ? late : 0;
    }

    // How alike the changes from hour to hour are, when the other stands so many hours late.
    private static double Like(double[] air, double[] other, int late)
    {
        var (a, b) = (new List<double>(), new List<double>());
        for (var h = Math.Max(0, -late); h + 1 < air.Length && h + 1 + late < other.Length; h++)
        {
            var (x, y) = (air[h + 1] - air[h], other[h + 1 + late] - other[h + late]);
            if (double.IsNaN(x) || double.IsNaN(y))
                continue;
            a.Add(x);
            b.Add(y);
        }

        return a.Count < LeastHours ? 0 : Correlation.Pearson(a, b) is var r && double.IsNaN(r) ? 0 : r;
    }

    private static double[] Moved(double[] series, int late) =>
        [.. Enumerable.Range(0, series.Length).Select(h => h + late >= 0 && h + late < series.Length ? series[h + late] : double.NaN)];
}
