using DesignSearch.Climate.Winters;
using MathNet.Numerics.Distributions;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Fills days with extremes and clearness so that every month meets its means and its spreads.</summary>
internal sealed class DayMaker(MonthlyClimate climate, UsualDays figures)
{
    private const double DarkestDay = 0.03;
    private const double ClearestDay = 0.82;
    private const double PolarNight = 0.4;
    private const double LeastDepthK = 0.4;
    private const int BurnInDays = 60;
    private const int SunPasses = 6;

    // A usual winter's coldest night strays less than a year's: by 3 K and more (common practice, no source).
    private const double LowestSdK = 1;

    // The mean daily low lies 0.8 to 2.0 K under the coldest hour of the mean daily course in seven open station files, as not every night is
    // coldest at dawn; with this much unrest made days do the same.
    private const double UnrestK = 0.8;
    private const double UnrestShare = 0.25;
    private const double UnrestMemory = 0.9;

    /// <summary>Runs the chain through the days, then brings each month to its means and the coldest night to its place.</summary>
    public void Fill(SyntheticDays days, ulong seed)
    {
        int[][] months = [.. days.Months().Select(m => m.ToArray())];
        var random = new XoshiroStream(seed, RandomPurpose.Days, 0);
        (double Mean, double Depth, double Clear) x = default;
        var chain = Chain(days, months[0]);
        for (var d = 0; d < BurnInDays; d++)
            x = chain.Next(x, random);
        foreach (var span in months)
        {
            chain = Chain(days, span);
            foreach (var d in span)
            {
                x = chain.Next(x, random);
                days.MeanC[d] = figures.Spread.MeanSdK[MonthOf(days, span)] * x.Mean;
                days.LowC[d] = days.MeanC[d] - DepthSd(days, span) * x.Depth;
                days.Clearness[d] = x.Clear;
            }

            FillClearness(days, span);
        }

        var lowest = figures.LowestC + LowestSdK * random.NextNormal();
        ColdTail.Reach(days, [.. months.Select(m => (m, Of(days, m).LowestHourC, figures.Spread.MeanSdK[MonthOf(days, m)], figures.Spread.LowSdK[MonthOf(days, m)]))], lowest);
        foreach (var span in months)
            Settle(days, span);
        FillUnrest(days, seed);
        TemperatureFit.Meet(days, months, climate);
    }

    // From strays to temperatures, the low under the mean.
    private void Settle(SyntheticDays days, int[] span)
    {
        var (month, means) = (MonthOf(days, span), Of(days, span));
        foreach (var d in span)
        {
            days.LowResidual[d] = days.LowC[d] / figures.Spread.LowSdK[month];
            days.MeanC[d] += means.MeanC;
            days.LowC[d] += means.LowestHourC;
            days.MeanC[d] = Math.Max(days.MeanC[d], days.LowC[d] + LeastDepthK);
        }
    }

    private void FillClearness(SyntheticDays days, int[] span)
    {
        var above = span.Sum(d => days.AboveWhPerM2[d]);
        var target = above > 0 ? Math.Min(Of(days, span).GhiKwhPerM2Day * 1000 * span.Length / above, 0.78) : PolarNight;
        var sd = figures.Spread.ClearnessSd[MonthOf(days, span)];
        Func<double, double> atShare = figures.ClearnessIsKnown ? new BoundedClearness(target, sd).AtShare : new ClearnessDistribution(target).AtShare;
        if (figures.ClearnessIsKnown)
            ColdTail.Standardise(days.Clearness, span, 0, 1);
        foreach (var d in span)
            days.Clearness[d] = atShare(Normal.CDF(0, 1, days.Clearness[d]));
        if (!figures.ClearnessIsKnown)
            MeetSun(days, span, target);
        for (var pass = 0; figures.ClearnessIsKnown && pass < SunPasses; pass++)
        {
            ColdTail.Standardise(days.Clearness, span, target, sd);
            MeetSun(days, span, target);
        }
    }

    private void FillUnrest(SyntheticDays days, ulong seed)
    {
        var random = new XoshiroStream(seed, RandomPurpose.Unrest, 0);
        var x = random.NextNormal();
        for (var h = 0; h < days.Unrest.Length; h++)
        {
            x = UnrestMemory * x + Math.Sqrt(1 - UnrestMemory * UnrestMemory) * random.NextNormal();
            var means = climate.Months[days.Month(h / 24) - 1];
            days.Unrest[h] = Math.Min(UnrestK, UnrestShare * (means.MeanC - means.LowestHourC)) * x;
        }
    }

    internal static void MeetSun(SyntheticDays days, int[] span, double target)
    {
        var above = span.Sum(d => days.AboveWhPerM2[d]);
        for (var pass = 0; pass < 50; pass++)
        {
            foreach (var d in span)
                days.Clearness[d] = Math.Clamp(days.Clearness[d], DarkestDay, ClearestDay);
            var mean = span.Sum(d => days.Clearness[d] * days.AboveWhPerM2[d]) / above;
            if (above <= 0 || Math.Abs(mean / target - 1) < 1e-9)
                return;
            foreach (var d in span)
                days.Clearness[d] *= target / mean;
        }
    }

    private MonthMeans Of(SyntheticDays days, int[] span) => climate.Months[MonthOf(days, span)];

    private static int MonthOf(SyntheticDays days, int[] span) => days.Month(span[0]) - 1;

    private DayChain Chain(SyntheticDays days, int[] span) => new(figures.Spread, MonthOf(days, span), DepthSd(days, span), Of(days, span).MeanC);

    private double DepthSd(SyntheticDays days, int[] span)
    {
        var (month, means) = (MonthOf(days, span), Of(days, span));
        return DayChain.DepthSdK(means.MeanC - means.LowestHourC, figures.Spread.MeanSdK[month], figures.Spread.LowSdK[month]);
    }
}
