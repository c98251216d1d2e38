using DesignSearch.Climate.Winters;
using MathNet.Numerics.Distributions;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Hours of wind with the usual spread, memory and daily course.</summary>
internal static class WindMaker
{
    private const double Shape = 1.8;
    private const double Memory = 0.85;
    private const double CalmMPerS = 1.2;

    /// <summary>Weibull about the monthly mean, stronger in the afternoon, calm in clear cold nights; every month meets its mean.</summary>
    public static double[] Make(SyntheticDays days, MonthlyClimate climate, ulong seed)
    {
        var wind = new double[days.Count * 24];
        var random = new XoshiroStream(seed, RandomPurpose.Wind, 0);
        var x = random.NextNormal();
        for (var h = 0; h < wind.Length; h++)
        {
            x = Memory * x + Math.Sqrt(1 - Memory * Memory) * random.NextNormal();
            var share = Math.Clamp(Normal.CDF(0, 1, x), 1e-9, 1 - 1e-9);
            var afternoon = Math.Max(0, Math.Cos((h % 24 + 0.5 - 14.5) * Math.PI / 12));
            wind[h] = Math.Pow(-Math.Log(1 - share), 1 / Shape) * (0.75 + 0.6 * afternoon);
        }

        foreach (var month in days.Months())
            MeetMonth(wind, days, [.. month], climate.Months[days.Month(month.First()) - 1].WindMPerS);
        return wind;
    }

    private static void MeetMonth(double[] wind, SyntheticDays days, int[] span, double mean)
    {
        for (var pass = 0; pass < 8; pass++)
        {
            var factor = mean / Math.Max(1e-9, span.Average(d => wind.AsSpan(24 * d, 24).ToArray().Average()));
            foreach (var d in span)
            {
                var calm = days.Clearness[d] > 0.6 && days.LowResidual[d] < -1;
                for (var h = 24 * d; h < 24 * d + 24; h++)
                    wind[h] = calm && days.Above[h] <= 0 ? Math.Min(wind[h] * factor, CalmMPerS) : wind[h] * factor;
            }
        }
    }
}
