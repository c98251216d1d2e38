using DesignSearch.Climate.Winters;
using MathNet.Numerics.Distributions;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Fills days with extremes and clearness so that every month meets its means.</summary>
internal sealed class DayMaker(MonthlyClimate climate, WinterOptions options)
{
    private const double DarkestDay = 0.03;
    private const double ClearestDay = 0.82;
    private const double ColdStretch = 1.4;
    private const int BurnInDays = 60;
    private readonly ClimateCharacter character = climate.UsedCharacter;
    private readonly HashSet<int> winterMonths = [.. Enumerable.Range(1, 12).OrderBy(m => climate.Months[m - 1].MeanC).ThenBy(m => m).Take(6)];

    /// <summary>Runs the chain through the days, then brings each month to its mean sun.</summary>
    public void Fill(SyntheticDays days, ulong seed)
    {
        var random = new XoshiroStream(seed, RandomPurpose.Days, 0);
        (double High, double Low, double Clear) x = default;
        for (var d = 0; d < BurnInDays; d++)
            x = Chain(days.Month(0)).Next(x, random);
        foreach (var month in days.Months())
        {
            int[] span = [.. month];
            var means = climate.Months[days.Month(span[0]) - 1];
            var target = means.GhiKwhPerM2Day * 1000 * span.Length / span.Sum(d => days.AboveWhPerM2[d]);
            var spread = new ClearnessDistribution(target);
            foreach (var d in span)
            {
                x = Chain(days.Month(d)).Next(x, random);
                days.LowResidual[d] = Stretched(x.Low);
                days.High[d] = means.MeanC + (means.MeanC - means.MeanDailyLowC) + Stretched(x.High) * (means.DailyHighSdK ?? UsualSd(high: true));
                days.Low[d] = means.MeanDailyLowC + Stretched(x.Low) * (means.DailyLowSdK ?? UsualLowSd());
                days.Clearness[d] = spread.AtShare(Normal.CDF(0, 1, x.Clear));
                Part(days, d);
            }

            MeetSun(days, span, Math.Min(target, 0.78));
        }

        MeetTemperatures(days);
    }

    private DayChain Chain(int month) => DayChain.For(character, winterMonths.Contains(month));

    private static double Stretched(double residual) => residual < -1 ? -1 + ColdStretch * (residual + 1) : residual;

    // Usual spreads of the reference climate notes: oceanic under maritime valley under inland.
    private double UsualSd(bool high) => character switch
    {
        ClimateCharacter.MaritimeOrValley => high ? 3.2 : 3.5,
        _ => 5,
    };

    private double UsualLowSd()
    {
        if (options.Known is not { } known)
            return UsualSd(high: false);
        var mean = ReturnLevels.MeanOfYearly(known.LowestC, known.Years, options.YearlyLowestSdK);
        var coldest = climate.Months.MinBy(m => m.MeanC)!;
        return Math.Clamp((coldest.MeanDailyLowC - mean) / 2.2, 1.5, 8);
    }

    private static void Part(SyntheticDays days, int d)
    {
        if (days.High[d] >= days.Low[d] + 1)
            return;
        var middle = (days.High[d] + days.Low[d]) / 2;
        (days.High[d], days.Low[d]) = (middle + 0.5, middle - 0.5);
    }

    internal static void MeetSun(SyntheticDays days, int[] span, double target)
    {
        var above = span.Sum(d => days.AboveWhPerM2[d]);
        for (var pass = 0; pass < 50; pass++)
        {
            var mean = span.Sum(d => days.Clearness[d] * days.AboveWhPerM2[d]) / above;
            if (Math.Abs(mean / target - 1) < 1e-9)
                return;
            foreach (var d in span)
                days.Clearness[d] = Math.Clamp(days.Clearness[d] * target / mean, DarkestDay, ClearestDay);
        }
    }

    // The mean and the mean lowest of the hours must come out, not those of the extremes: shift the months until they do.
    private void MeetTemperatures(SyntheticDays days)
    {
        var months = days.Months().Select(m => m.ToArray()).ToArray();
        for (var pass = 0; pass < 40; pass++)
        {
            var hours = TemperatureCurve.Hours(days);
            var worst = 0.0;
            foreach (var span in months)
            {
                var means = climate.Months[days.Month(span[0]) - 1];
                var low = means.MeanDailyLowC - span.Average(d => hours.AsSpan(24 * d, 24).ToArray().Min());
                var mean = means.MeanC - span.Average(d => hours.AsSpan(24 * d, 24).ToArray().Average());
                worst = Math.Max(worst, Math.Max(Math.Abs(low), Math.Abs(mean)));
                foreach (var d in span)
                {
                    days.Low[d] += 0.9 * low;
                    days.High[d] += 1.5 * mean - 0.7 * low;
                    Part(days, d);
                }
            }

            if (worst < 1e-3)
                return;
        }
    }
}
