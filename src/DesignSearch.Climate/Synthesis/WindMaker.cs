using DesignSearch.Climate.Winters;
using MathNet.Numerics.Distributions;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Hours of wind with the usual spread, memory and daily course, tied to the cold as the place's wind tells. Every month meets its mean.</summary>
internal static class WindMaker
{
    private const double Shape = 1.8;
    private const double Memory = 0.85;
    private const double ClearCalm = 0.12;

    // Seven open station files: where the mean wind is under 3.5 m/s, the coldest tenth of the days has 0.79 to 0.89 of it; at 4.8 m/s it has
    // all of it, and at 5.6 m/s, where the cold comes with the gale, 1.4 times. The afternoon's wind stands out less the windier the place.
    private const double CalmPlaceMPerS = 3.5;
    private const double WindyPlaceMPerS = 5.5;

    /// <summary>Weibull about the monthly mean.</summary>
    /// <param name="days">Their clearness, and how cold each is.</param>
    /// <param name="climate">Means of the months.</param>
    /// <param name="seed">Of the winter.</param>
    /// <returns>At 10 m, hour by hour [m/s].</returns>
    public static double[] Make(SyntheticDays days, MonthlyClimate climate, ulong seed)
    {
        var wind = new double[days.Count * 24];
        var random = new XoshiroStream(seed, RandomPurpose.Wind, 0);
        var x = random.NextNormal();
        for (var h = 0; h < wind.Length; h++)
        {
            x = Memory * x + Math.Sqrt(1 - Memory * Memory) * random.NextNormal();
            var share = Math.Clamp(Normal.CDF(0, 1, x), 1e-9, 1 - 1e-9);
            var windy = Windiness(climate.Months[days.Month(h / 24) - 1].WindMPerS);
            var afternoon = Math.Max(0, Math.Cos((h % 24 + 0.5 - 14.5) * Math.PI / 12));
            wind[h] = Math.Pow(-Math.Log(1 - share), 1 / Shape) * (1 + (0.55 - 0.45 * windy) * afternoon) * Cold(days, h / 24, windy);
        }

        foreach (var month in days.Months())
            MeetMonth(wind, [.. month], climate.Months[days.Month(month.First()) - 1].WindMPerS);
        return wind;
    }

    private static double Windiness(double meanMPerS) => Math.Clamp((meanMPerS - CalmPlaceMPerS) / (WindyPlaceMPerS - CalmPlaceMPerS), 0, 1);

    private static double Cold(SyntheticDays days, int day, double windy)
    {
        var calm = (0.12 - 0.32 * windy) * Math.Clamp(days.LowResidual[day], -2, 2);
        return Math.Exp(calm - (1 - windy) * ClearCalm * Math.Clamp((days.Clearness[day] - 0.45) / 0.15, -2, 2));
    }

    private static void MeetMonth(double[] wind, int[] span, double mean)
    {
        var factor = mean / Math.Max(1e-9, span.Average(d => wind.AsSpan(24 * d, 24).ToArray().Average()));
        foreach (var d in span)
        {
            for (var h = 24 * d; h < 24 * d + 24; h++)
                wind[h] *= factor;
        }
    }
}
