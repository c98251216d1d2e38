using DesignSearch.Climate.Winters;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Finds the extremes of days from which the curve of hours has each day's mean and lowest, and each month's, and their spread, exactly.</summary>
internal static class TemperatureFit
{
    private const int LowPasses = 12;

    // The day's mean is met halfway only: what an evening on its way to a colder morning lacks is not to be made up at noon.
    private const int MeanPasses = 2;
    private const int MonthPasses = 40;
    private const double SpreadStep = 0.7;
    private const double Enough = 1e-3;
    private const int Afternoon = 14;
    private const double FarthestK = 4;
    private const double LeastRangeK = 0.3;

    /// <summary>Fills High and Low.</summary>
    /// <param name="days">Their mean and lowest hour are wanted.</param>
    /// <param name="months">Their days, month by month.</param>
    /// <param name="climate">Means of the months.</param>
    public static void Meet(SyntheticDays days, int[][] months, MonthlyClimate climate)
    {
        for (var d = 0; d < days.Count; d++)
            (days.Low[d], days.High[d]) = (days.LowC[d], 2 * days.MeanC[d] - days.LowC[d]);
        for (var pass = 0; pass < LowPasses; pass++)
            MeetDays(days, meansToo: pass < MeanPasses);
        for (var pass = 0; pass < MonthPasses && MeetMonths(days, months, climate) > Enough; pass++)
        {
        }
    }

    // An evening that runs down to a colder morning has its lowest hour there; the day's own extremes do not move that.
    private static void MeetDays(SyntheticDays days, bool meansToo)
    {
        var hours = TemperatureCurve.Hours(days);
        for (var d = 0; d < days.Count; d++)
        {
            var day = hours.AsSpan(24 * d, 24);
            var (mean, lowest) = (0.0, 0);
            for (var h = 0; h < day.Length; h++)
            {
                mean += day[h] / day.Length;
                lowest = day[h] < day[lowest] ? h : lowest;
            }

            var low = days.Low[d] + (lowest < Afternoon ? 0.7 * (days.LowC[d] - day[lowest]) : 0);
            days.Low[d] = Math.Clamp(low, days.LowC[d] - FarthestK, days.LowC[d] + FarthestK);
            days.High[d] += (meansToo ? 0.4 : 0) * (days.MeanC[d] - mean);
            Part(days, d);
        }
    }

    // Besides the means, the spread of the days: an evening on its way down to a colder morning evens the lows of hours out.
    private static double MeetMonths(SyntheticDays days, int[][] months, MonthlyClimate climate)
    {
        var (means, lows) = OfDays(days);
        var worst = 0.0;
        foreach (var span in months)
        {
            var wanted = climate.Months[days.Month(span[0]) - 1];
            var (mean, low) = (wanted.MeanC - span.Average(d => means[d]), wanted.LowestHourC - span.Average(d => lows[d]));
            var (meanWider, lowWider) = (Widening(days.MeanC, means, span), Widening(days.LowC, lows, span));
            worst = Math.Max(worst, Math.Max(Math.Abs(low), Math.Abs(mean)));
            var share = span.Average(d => Moved(days, d));
            var (highMiddle, lowMiddle) = (span.Average(d => days.High[d]), span.Average(d => days.Low[d]));
            foreach (var d in span)
            {
                days.Low[d] += 0.9 * low * Moved(days, d) / share + lowWider * (days.Low[d] - lowMiddle);
                days.High[d] += 1.5 * mean - 0.7 * low + meanWider * (days.High[d] - highMiddle);
                Part(days, d);
            }
        }

        return worst;
    }

    private static double Widening(double[] wanted, double[] found, int[] span) => SpreadStep * (Spread(wanted, span) / Math.Max(1e-6, Spread(found, span)) - 1);

    private static double Spread(double[] values, int[] span)
    {
        var middle = span.Average(d => values[d]);
        return Math.Sqrt(span.Average(d => (values[d] - middle) * (values[d] - middle)));
    }

    private static (double[] Means, double[] Lows) OfDays(SyntheticDays days)
    {
        var hours = TemperatureCurve.Hours(days);
        var (means, lows) = (new double[days.Count], new double[days.Count]);
        for (var d = 0; d < days.Count; d++)
        {
            lows[d] = double.PositiveInfinity;
            for (var h = 24 * d; h < 24 * (d + 1); h++)
                (means[d], lows[d]) = (means[d] + hours[h] / 24, Math.Min(lows[d], hours[h]));
        }

        return (means, lows);
    }

    // The coldest nights are moved least.
    private static double Moved(SyntheticDays days, int d) => Math.Clamp(1.5 + 0.5 * days.LowResidual[d], 0.3, 1);

    // The low stays: a day pressed down from above would drag it below every night there is.
    private static void Part(SyntheticDays days, int d) => days.High[d] = Math.Max(days.High[d], days.Low[d] + LeastRangeK);
}
