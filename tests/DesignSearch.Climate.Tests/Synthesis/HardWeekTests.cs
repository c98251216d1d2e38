using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>The stress week day by day: what its levels say is what its hours have.</summary>
public sealed class HardWeekTests
{
    private static readonly Winter Typical = WinterMaker.Synthetic(ReferenceSites.Redmond, new(11, 1, 3, 31), WinterKind.Typical, 4, new());
    private static readonly HardLevels Levels = new(-24, -17, -15, -10);

    [Fact]
    public void Each_day_has_the_mean_that_the_levels_leave_for_it()
    {
        var (hard, first) = Made(new());
        // The three coldest have 3 x -15, the middle one -17, so -14 each beside it; the week 7 x -10, so (-70 + 45)/4 = -6.25 for each dull day, shared out.
        double[] means = [-6.25 + 0.6, -6.25 + 0.2, -6.25, -6.25 - 0.8, -14, -17, -14];
        for (var d = 0; d < 7; d++)
            Assert.Equal(means[d], Day(hard.AirC, first, d).Average(), 0.1);
        Assert.Equal(-24, hard.AirC[first..(first + 168)].Min(), 0.01);
        Assert.InRange(Array.IndexOf(hard.AirC, hard.AirC[first..(first + 168)].Min()) - first, 5 * 24, (6 * 24) - 1);
        // Dull days move by less than three degrees, the day of clearing by more.
        Assert.All(Enumerable.Range(0, 3), d => Assert.InRange(Day(hard.AirC, first, d).Max() - Day(hard.AirC, first, d).Min(), 1, 4.5));
        Assert.True(Day(hard.AirC, first, 5).Max() - Day(hard.AirC, first, 5).Min() > 6);
    }

    [Fact]
    public void Its_wind_light_and_dew_are_those_of_three_dull_a_clearing_and_three_clear_days()
    {
        var (hard, first) = Made(new());
        double[] wind = [5, 6, 5, 3, 0.8, 0.8, 0.8], clear = [0.17, 0.15, 0.18, 0.40, 0.66, 0.70, 0.68];
        var clearness = WinterBuilder.DailyClearness(hard.Place, hard.Start, hard.GlobalWPerM2);
        for (var d = 0; d < 7; d++)
        {
            Assert.All(Day(hard.WindMPerS, first, d), w => Assert.Equal(wind[d], w));
            Assert.Equal(clear[d], clearness[(first / 24) + d], 0.03);
            // Damp while it is dull: the dew point lies under the air by no more than a day moves, and never above it.
            var (air, dew) = (Day(hard.AirC, first, d), Day(hard.DewPointC, first, d));
            Assert.All(air.Zip(dew), p => Assert.True(p.Second <= p.First));
            if (d is 0 or 1 or 5)
                Assert.Equal(air.Min() - (d < 3 ? 0.5 : 0), dew.Max(), 0.3);
        }

        // Dull light is diffuse, clear light mostly beam.
        Assert.True(Day(hard.DiffuseWPerM2, first, 1).Sum() > 0.95 * Day(hard.GlobalWPerM2, first, 1).Sum());
        Assert.True(Day(hard.DiffuseWPerM2, first, 5).Sum() < 0.5 * Day(hard.GlobalWPerM2, first, 5).Sum());
    }

    [Fact]
    public void A_day_leads_in_and_a_day_leads_out_and_the_sky_goes_with_the_air()
    {
        var (hard, first) = Made(new());
        for (var h = 0; h < hard.Hours; h++)
        {
            var (outside, week) = (h < first - 24 || h >= first + 192, h >= first && h < first + 168);
            if (outside)
                Assert.Equal((Typical.AirC[h], Typical.SkyC[h]), (hard.AirC[h], hard.SkyC[h]));
            else if (!week)
                Assert.Equal(hard.AirC[h] - Typical.AirC[h], hard.SkyC[h] - Typical.SkyC[h], 1e-9);
            if (!week)
                Assert.Equal((Typical.WindMPerS[h], Typical.GlobalWPerM2[h]), (hard.WindMPerS[h], hard.GlobalWPerM2[h]));
        }

        // Half a raised cosine: a quarter of an hour's worth at its start, half-way at its middle, nearly all of it at its end.
        Assert.Equal(Typical.AirC[first - 24], hard.AirC[first - 24], 0.1);
        Assert.NotEqual(Typical.AirC[first - 12], hard.AirC[first - 12]);
        Assert.Equal(Typical.AirC[first + 191], hard.AirC[first + 191], 0.1);
    }

    // The week lies in the second half of the darkest fortnight of the coldest month.
    [Fact]
    public void It_ends_the_darkest_fortnight_of_the_coldest_month()
    {
        var (_, first) = Made(new());
        var days = WinterDays.Of(Typical);
        var month = days.ColdestMonth();
        double Light(int from) => days.LightWh.AsSpan(from, 14).ToArray().Sum();
        var starts = Enumerable.Range(month[0], month.Length - 13).ToList();
        Assert.Equal(starts.MinBy(Light) + 7, (first - Typical.WarmUpHours) / 24);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(6)]
    [InlineData(24)]
    public void A_power_cut_has_the_coldest_hour_in_its_middle(int hours)
    {
        var (hard, first) = Made(new() { PowerCutHours = hours });
        Assert.Equal(new HourSpan(first, 168), hard.StressWeek);
        var coldest = Enumerable.Range(first, 168).MinBy(h => hard.AirC[h]);
        Assert.Equal(hours == 0 ? [] : [new HourSpan(coldest - (hours / 2), hours)], hard.PowerCuts);
    }

    [Fact]
    public void It_says_from_when_how_cold_and_why()
    {
        var (asked, first) = Made(new() { HardLowestC = -24 });
        var day = Typical.Start.AddHours(first).ToString("d MMMM", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal($"A stress week is laid over the winter from {day}: three dull windy days, then clear calm cold down to -24.0 °C, as the builder asked.", asked.Remarks[^1]);
        Assert.EndsWith("down to -24.0 °C, once in 7.5 years.", Made(new() { HardReturnYears = 7.5 }).Hard.Remarks[^1], StringComparison.Ordinal);
    }

    // Deeper than the drawn winter by half a spread at least; a day 2.5 K above its lowest hour, three days and the week half a degree above each other.
    [Fact]
    public void Levels_keep_their_order_where_the_lowest_is_mild()
    {
        var mild = HardLevels.Of([Typical], Typical, new() { HardLowestC = 5 });
        Assert.Equal((5, 7.5, 8, 8.5), (mild.LowestHourC, mild.DayC, mild.ThreeDaysC, mild.WeekC));
        var known = HardLevels.Of([Typical], Typical, new() { Known = new(2, 10), YearlyLowestSdK = 3 });
        Assert.Equal(Typical.AirC.Skip(Typical.WarmUpHours).Min() - 1.5, known.LowestHourC, 1e-9);
    }

    private static double[] Day(double[] hours, int first, int day) => hours[(first + (24 * day))..(first + (24 * (day + 1)))];

    private static (Winter Hard, int First) Made(WinterOptions options)
    {
        var hard = HardWinter.Over(Typical, Levels, options);
        return (hard, hard.StressWeek!.Value.First);
    }
}
