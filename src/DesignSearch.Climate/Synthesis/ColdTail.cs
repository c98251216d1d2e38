namespace DesignSearch.Climate.Synthesis;

/// <summary>Stretches or shortens the cold side of a winter's daily lows so that its coldest night is as cold as it should be; the spreads stay but for
/// what the last step moves.</summary>
internal static class ColdTail
{
    // Standard deviations below the mean where the stretch begins.
    private const double StretchedFrom = -1;
    private const double ShortenedFrom = -1.5;
    private const double Least = 0.15;
    private const double Most = 4;
    private const int Passes = 30;
    private const int Rounds = 4;

    /// <summary>Moves lows and means of the cold days together.</summary>
    /// <param name="days">Strays of mean and low from their months [K].</param>
    /// <param name="months">Days, mean of the lows [°C], spread of means and lows [K] of each month.</param>
    /// <param name="lowestC">Lowest of all that is wanted [°C].</param>
    public static void Reach(SyntheticDays days, IReadOnlyList<(int[] Days, double LowC, double MeanSdK, double LowSdK)> months, double lowestC)
    {
        for (var round = 0; round < Rounds; round++)
        {
            var (low, high) = (Least, Most);
            for (var pass = 0; pass < Passes; pass++)
            {
                var middle = (low + high) / 2;
                var lowest = months.Min(m => m.Days.Min(d => m.LowC + m.LowSdK * Stretched(days.LowC[d] / m.LowSdK, middle)));
                (low, high) = lowest > lowestC ? (middle, high) : (low, middle);
            }

            foreach (var month in months)
            {
                foreach (var d in month.Days)
                {
                    var colder = month.LowSdK * Stretched(days.LowC[d] / month.LowSdK, low) - days.LowC[d];
                    (days.MeanC[d], days.LowC[d]) = (days.MeanC[d] + colder, days.LowC[d] + colder);
                }

                if (round == Rounds - 1)
                    continue;
                Standardise(days.MeanC, month.Days, 0, month.MeanSdK);
                Standardise(days.LowC, month.Days, 0, month.LowSdK);
            }
        }
    }

    /// <summary>Gives values a mean and a standard deviation.</summary>
    /// <param name="values">Changed where the span says.</param>
    /// <param name="span">Which of them.</param>
    /// <param name="mean">Wanted mean.</param>
    /// <param name="sd">Wanted standard deviation.</param>
    public static void Standardise(double[] values, int[] span, double mean, double sd)
    {
        var middle = span.Average(d => values[d]);
        var scale = sd / Math.Max(1e-6, Math.Sqrt(span.Average(d => (values[d] - middle) * (values[d] - middle))));
        foreach (var d in span)
            values[d] = mean + scale * (values[d] - middle);
    }

    private static double Stretched(double residual, double stretch)
    {
        var from = stretch < 1 ? ShortenedFrom : StretchedFrom;
        return residual < from ? from + stretch * (residual - from) : residual;
    }
}
