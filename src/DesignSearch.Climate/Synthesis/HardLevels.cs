using DesignSearch.Climate.Winters;
using MathNet.Numerics.Statistics;

namespace DesignSearch.Climate.Synthesis;

/// <summary>How cold the stress week must be.</summary>
/// <param name="LowestHourC">Lowest hour [°C].</param>
/// <param name="DayC">Coldest day's mean [°C].</param>
/// <param name="ThreeDaysC">Coldest three days' mean [°C].</param>
/// <param name="WeekC">The week's mean [°C].</param>
internal sealed record HardLevels(double LowestHourC, double DayC, double ThreeDaysC, double WeekC)
{
    private const double LeastDayAboveLowest = 2.5;
    private const int EnoughWinters = 15;

    /// <summary>From monthly means and, where known, the lowest temperature seen.</summary>
    public static HardLevels Of(MonthlyClimate climate, Winter typical, WinterOptions options) =>
        From(MeanYearlyLowest(climate, options), options.YearlyLowestSdK, climate.Months.Min(m => m.MeanC), typical, options);

    /// <summary>Lowest hour of the return period by monthly means [°C].</summary>
    public static double Level(MonthlyClimate climate, WinterOptions options) =>
        ReturnLevels.Level(MeanYearlyLowest(climate, options), options.YearlyLowestSdK, options.HardReturnYears);

    /// <summary>From winters of one place alone.</summary>
    public static HardLevels Of(IReadOnlyList<Winter> winters, Winter typical, WinterOptions options)
    {
        var (mean, sd) = YearlyLowest(winters, options);
        var days = WinterDays.Of(typical);
        return From(mean, sd, days.ColdestMonth().Average(d => days.MeanC[d]), typical, options);
    }

    /// <summary>Lowest hour of the return period by the winters of one place [°C].</summary>
    public static double Level(IReadOnlyList<Winter> winters, WinterOptions options)
    {
        var (mean, sd) = YearlyLowest(winters, options);
        return ReturnLevels.Level(mean, sd, options.HardReturnYears);
    }

    private static double MeanYearlyLowest(MonthlyClimate climate, WinterOptions options) => UsualDays.Of(climate, options).LowestC;

    private static double? Known(WinterOptions options) =>
        options.Known is { } known ? ReturnLevels.MeanOfYearly(known.LowestC, known.Years, options.YearlyLowestSdK) : null;

    // Enough real winters speak for themselves; of fewer, the days of the coldest month tell how low a year goes.
    private static (double Mean, double Sd) YearlyLowest(IReadOnlyList<Winter> winters, WinterOptions options)
    {
        if (Known(options) is { } known)
            return (known, options.YearlyLowestSdK);
        if (winters.Count < EnoughWinters)
            return (winters.Average(ByDays), options.YearlyLowestSdK);
        double[] lowest = [.. winters.Select(w => w.AirC.Skip(w.WarmUpHours).Min())];
        return (lowest.Average(), lowest.StandardDeviation());
    }

    private static double ByDays(Winter winter)
    {
        var days = WinterDays.Of(winter);
        var lows = days.ColdestMonth().Select(d => days.LowC[d]).ToArray();
        return lows.Average() - 2.2 * lows.PopulationStandardDeviation();
    }

    private static HardLevels From(double meanYearlyLowest, double sd, double coldestMonthC, Winter typical, WinterOptions options)
    {
        var factor = ReturnLevels.Factor(options.HardReturnYears);
        var drawn = ReturnLevels.Level(meanYearlyLowest, sd, options.HardReturnYears);
        var lowest = options.HardLowestC ?? Math.Min(drawn, typical.AirC.Skip(typical.WarmUpHours).Min() - 0.5 * sd);
        double Run(int days) => coldestMonthC - ReturnLevels.UsualDepthK(days) - factor * sd * ReturnLevels.SpreadShare(days);
        var day = Math.Max(Run(1), lowest + LeastDayAboveLowest);
        var three = Math.Max(Run(3), day + 0.5);
        return new(lowest, day, three, Math.Max(Run(7), three + 0.5));
    }
}
