using DesignSearch.Climate.Winters;
using MathNet.Numerics.Distributions;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Makes the clearness of days whose temperature is known: a wide daily range goes with a clear sky.</summary>
internal static class SunFromRange
{
    // Correlation of clearness and daily range in winter at real sites is 0.4 to 0.8.
    private const double Link = 0.6;

    /// <summary>Fills the clearness, month by month.</summary>
    /// <param name="days">Days that start with the hours of air.</param>
    /// <param name="air">Hour means [°C].</param>
    /// <param name="monthly">Mean daily sun; none: 0.16 times the root of the mean range (Hargreaves, inland).</param>
    /// <param name="seed">For the part that chance decides.</param>
    public static void Fill(SyntheticDays days, double[] air, MonthlyClimate? monthly, ulong seed)
    {
        var random = new XoshiroStream(seed, RandomPurpose.Days, 1);
        foreach (var month in days.Months())
        {
            int[] span = [.. month];
            var range = span.ToDictionary(d => d, d => RangeOf(air, d));
            var target = monthly is null
                ? Math.Clamp(0.16 * Math.Sqrt(range.Values.Average()), 0.15, 0.75)
                : Math.Min(0.75, monthly.Months[days.Month(span[0]) - 1].GhiKwhPerM2Day * 1000 / span.Average(d => days.AboveWhPerM2[d]));
            var spread = new ClearnessDistribution(target);
            var rank = span.OrderBy(d => range[d]).ThenBy(d => d).Select((d, r) => (d, r)).ToDictionary(x => x.d, x => (x.r + 0.5) / span.Length);
            foreach (var d in span)
            {
                var x = Link * Normal.InvCDF(0, 1, rank[d]) + Math.Sqrt(1 - Link * Link) * random.NextNormal();
                days.Clearness[d] = spread.AtShare(Normal.CDF(0, 1, x));
            }

            DayMaker.MeetSun(days, span, target);
        }
    }

    private static double RangeOf(double[] air, int day)
    {
        var hours = air.AsSpan(24 * day, Math.Min(24, air.Length - 24 * day)).ToArray();
        return hours.Max() - hours.Min();
    }
}
