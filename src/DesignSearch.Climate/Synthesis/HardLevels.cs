namespace DesignSearch.Climate;

/// <summary>How cold the stress week must be.</summary>
/// <param name="LowestHourC">Lowest hour [°C].</param>
/// <param name="DayC">Coldest day's mean [°C].</param>
/// <param name="ThreeDaysC">Coldest three days' mean [°C].</param>
/// <param name="WeekC">The week's mean [°C].</param>
internal sealed record HardLevels(double LowestHourC, double DayC, double ThreeDaysC, double WeekC)
{
    private const double LeastDayAboveLowest = 2.5;

    /// <summary>From monthly means and, where known, the lowest temperature seen.</summary>
    public static HardLevels Of(MonthlyClimate climate, Winter typical, WinterOptions options)
    {
        var coldest = climate.Months.MinBy(m => m.MeanC)!;
        var sd = coldest.DailyLowSdK ?? (climate.UsedCharacter == ClimateCharacter.MaritimeOrValley ? 3.5 : 5);
        var mean = climate.LowestKnownC is { } lowest
            ? ReturnLevels.MeanOfYearly(lowest, climate.LowestKnownYears, options.YearlyLowestSdK)
            : coldest.MeanDailyLowC - 2.2 * sd;
        return From(mean, coldest.MeanC, typical, options);
    }

    /// <summary>From a winter alone.</summary>
    public static HardLevels Of(Winter typical, WinterOptions options)
    {
        var days = WinterDays.Of(typical);
        return From(MeanYearlyLowest(typical), days.ColdestMonth().Average(d => days.MeanC[d]), typical, options);
    }

    /// <summary>Lowest hour of the return period by a winter's own days [°C].</summary>
    public static double Drawn(Winter typical, WinterOptions options) => ReturnLevels.Level(MeanYearlyLowest(typical), options.YearlyLowestSdK, options.HardReturnYears);

    private static double MeanYearlyLowest(Winter typical)
    {
        var days = WinterDays.Of(typical);
        var lows = days.ColdestMonth().Select(d => days.LowC[d]).ToArray();
        return lows.Average() - 2.2 * Math.Sqrt(lows.Average(l => (l - lows.Average()) * (l - lows.Average())));
    }

    private static HardLevels From(double meanYearlyLowest, double coldestMonthC, Winter typical, WinterOptions options)
    {
        var sd = options.YearlyLowestSdK;
        var factor = ReturnLevels.Factor(options.HardReturnYears);
        var drawn = ReturnLevels.Level(meanYearlyLowest, sd, options.HardReturnYears);
        var lowest = options.HardLowestC ?? Math.Min(drawn, typical.AirC.Skip(typical.WarmUpHours).Min() - 0.5 * sd);
        double Run(int days) => coldestMonthC - ReturnLevels.UsualDepthK(days) - factor * sd * ReturnLevels.SpreadShare(days);
        var day = Math.Max(Run(1), lowest + LeastDayAboveLowest);
        var three = Math.Max(Run(3), day + 0.5);
        return new(lowest, day, three, Math.Max(Run(7), three + 0.5));
    }
}
