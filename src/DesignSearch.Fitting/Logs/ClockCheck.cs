using DesignSearch.Fitting.Model;
using DesignSearch.Fitting.Nights;
using DesignSearch.Fitting.Words;

namespace DesignSearch.Fitting.Logs;

/// <summary>Holds the log's clock against the sun: the warmth of a sunny day must have its middle where the model of the house has it.</summary>
internal static class ClockCheck
{
    // A day tells the clock when the sun lifts the air by so much [K].
    private const double LeastLiftK = 4;
    private const int LeastDays = 3;
    private const int AroundHours = 6;
    private const double DullSun = 0.3;

    // An hour hardly matters, and the drawing's outlook is not known better [h].
    private const double OffHours = 1.5;

    /// <summary>By how many hours each hour of the log stands late; all 0 where the clock is right, or cannot be told.</summary>
    /// <param name="model">The log in the house by its drawing.</param>
    /// <param name="point">Figures to predict with.</param>
    /// <param name="zenithDeg">The sun's zenith distance in the hours of the log.</param>
    /// <param name="says">Receives what is said of it.</param>
    public static int[] Late(FitModel model, FitPoint point, ReadOnlySpan<double> zenithDeg, List<string> says)
    {
        var log = model.Log;
        var days = DaySplit.All(log, zenithDeg);
        // What the sun alone does to the air: the nights before it are the log's own, its clock and all.
        var sunny = model.Air([point, point with { Sun = DullSun }], model.FreeIn(days));
        double[] made = [.. sunny[0].Zip(sunny[1], (a, b) => a - b)];
        var (late, off) = (new int[log.Hours], new List<(DateTime Day, int Hour, double Hours)>());
        foreach (var day in days)
        {
            var (from, to) = (Math.Max(0, day.First - AroundHours), Math.Min(log.Hours, day.First + day.Count + AroundHours));
            if (Middle(log.InsideC, from, to) is { } measured && Middle(made, day.First, day.First + day.Count) is { } predicted)
                off.Add((day.Evening, day.First, measured - predicted));
        }

        if (off.Count < LeastDays)
        {
            says.Add(ClockWords.Dull(off.Count));
            return late;
        }

        var jump = Jump(off);
        var parts = jump is { } at ? new[] { off[..at], off[at..] } : [off];
        foreach (var part in parts)
        {
            var hours = Median(part.Select(d => d.Hours));
            var first = part == parts[0] ? 0 : part[0].Hour - 12;
            if (Math.Abs(hours) >= OffHours)
                Array.Fill(late, (int)Math.Round(hours), first, log.Hours - first);
            else
                Array.Fill(late, 0, first, log.Hours - first);
        }

        if (jump is { } where)
            says.Add(ClockWords.Jump(off[where].Day, Median(parts[1].Select(d => d.Hours)) - Median(parts[0].Select(d => d.Hours))));
        else
            says.Add(late[0] != 0 ? ClockWords.Off(late[0], off.Count) : ClockWords.Right(off.Count, Median(off.Select(d => d.Hours))));
        return late;
    }

    /// <summary>A log set right.</summary>
    /// <param name="log">The log.</param>
    /// <param name="late">See <see cref="Late"/>.</param>
    public static HouseLog SetRight(HouseLog log, int[] late)
    {
        double[] Moved(double[] series)
        {
            var moved = new double[series.Length];
            Array.Fill(moved, double.NaN);
            for (var h = 0; h < series.Length; h++)
            {
                if (h - late[h] >= 0 && h - late[h] < moved.Length)
                    moved[h - late[h]] = series[h];
            }

            return moved;
        }

        return log with
        {
            InsideC = Moved(log.InsideC),
            OutsideC = Moved(log.OutsideC),
            HeaterW = log.HasHeater ? Moved(log.HeaterW) : log.HeaterW,
        };
    }

    // The hour about which the day's warmth lies, above a straight line through its ends.
    private static double? Middle(double[] air, int from, int to)
    {
        var (weight, sum, most) = (0.0, 0.0, 0.0);
        var (first, last) = (air[from], air[to - 1]);
        for (var h = from; h < to; h++)
        {
            if (double.IsNaN(air[h]))
                return null;
            var lift = Math.Max(0, air[h] - Math.Min(first, last));
            (weight, sum, most) = (weight + lift * lift, sum + lift * lift * h, Math.Max(most, lift));
        }

        return most < LeastLiftK ? null : sum / weight;
    }

    private static int? Jump(List<(DateTime Day, int Hour, double Hours)> off)
    {
        var (best, most) = ((int?)null, OffHours);
        for (var at = LeastDays; at <= off.Count - LeastDays; at++)
        {
            var change = Math.Abs(Median(off[at..].Select(d => d.Hours)) - Median(off[..at].Select(d => d.Hours)));
            if (change > most)
                (best, most) = (at, change);
        }

        return best;
    }

    private static double Median(IEnumerable<double> values) => MathNet.Numerics.Statistics.Statistics.Median(values);
}
