using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Winters;
using MathNet.Numerics.Statistics;

namespace DesignSearch.Climate.Tests;

/// <summary>Statistics of the counted days of a winter, months taken out of them.</summary>
internal sealed record WinterFigures(double LagLow, double LagMean, double LagClear, double ClearLow, double ClearHigh, double ClearRange, int FrostDays, double Lowest, double Design, double DiffuseShare, double LagHigh, int DarkRun, double SdMeanK)
{
    public static WinterFigures Of(Winter winter)
    {
        var days = WinterDays.Of(winter);
        var month = Enumerable.Range(0, days.Count).Select(d => winter.Start.AddHours(days.FirstHour(d)).Month).ToArray();
        var season = winter.GlobalWPerM2[winter.WarmUpHours..];
        var clear = WinterBuilder.DailyClearness(winter.Place, winter.Start.AddHours(winter.WarmUpHours), season)[..days.Count];
        var (low, high, mean) = (Residual(days.LowC, month), Residual(days.HighC, month), Residual(days.MeanC, month));
        var k = Residual(clear, month);
        var range = Residual([.. days.HighC.Zip(days.LowC, (a, b) => a - b)], month);
        var air = winter.AirC[winter.WarmUpHours..];
        return new(
            Lag(low, month), Lag(mean, month), Lag(k, month), Correlation.Pearson(k, low), Correlation.Pearson(k, high), Correlation.Pearson(k, range),
            days.LowC.Zip(days.MeanC, Reading).Count(l => l < 0), air.Min(), air.Order().ElementAt(35),
            winter.DiffuseWPerM2[winter.WarmUpHours..].Sum() / season.Sum(),
            Lag(high, month), LongestDark(clear), Math.Sqrt(mean.Average(m => m * m)));
    }

    // The files' frost days are of readings, which go lower than hour means: by a twentieth of the way down from the mean.
    private static double Reading(double lowestHourC, double meanC) => MonthMeans.OfHourMeans(meanC, lowestHourC, 0, 0, 0).MeanDailyLowC;

    // Days in a row with under a quarter of the light above the air.
    private static int LongestDark(double[] clear)
    {
        var (run, longest) = (0, 0);
        foreach (var k in clear)
        {
            run = k < 0.25 ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        return longest;
    }

    private static double[] Residual(double[] values, int[] month)
    {
        var means = values.Select((v, d) => (v, month[d])).GroupBy(x => x.Item2).ToDictionary(g => g.Key, g => g.Average(x => x.v));
        return [.. values.Select((v, d) => v - means[month[d]])];
    }

    private static double Lag(double[] residual, int[] month)
    {
        var pairs = Enumerable.Range(1, residual.Length - 1).Where(d => month[d] == month[d - 1]).ToArray();
        return Correlation.Pearson(pairs.Select(d => residual[d - 1]), pairs.Select(d => residual[d]));
    }
}
