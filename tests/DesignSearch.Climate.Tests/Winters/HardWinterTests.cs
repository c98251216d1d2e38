using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class HardWinterTests
{
    private static readonly SeasonDates Season = new(11, 1, 3, 31);

    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(30)]
    public void Meets_the_levels_of_its_return_period(double years)
    {
        var climate = ReferenceSites.Redmond;
        var options = new WinterOptions { HardReturnYears = years, Known = new(-22, 10) };
        var hard = WinterMaker.Synthetic(climate, Season, WinterKind.Hard, 4, options);
        var factor = ReturnLevels.Factor(years);
        var air = hard.AirC[hard.WarmUpHours..];
        Assert.Equal(ReturnLevels.Level(ReturnLevels.MeanOfYearly(-22, 10, 3), 3, years), air.Min(), 0.2);
        var days = WinterDays.Of(hard).MeanC;
        double Coldest(int n) => Enumerable.Range(0, days.Length - n + 1).Min(d => days.Skip(d).Take(n).Average());
        Assert.Equal(-0.21 - 9.3 - factor * 3, Coldest(1), 0.4);
        Assert.Equal(-0.21 - 7.4 - factor * 3 * 0.8, Coldest(3), 0.6);
        var week = hard.StressWeek!.Value;
        Assert.Equal(-0.21 - 4.7 - factor * 3 * 0.6, hard.AirC[week.First..(week.First + week.Count)].Average(), 0.4);
    }

    [Fact]
    public void The_week_is_dark_then_clear_and_the_rest_is_untouched()
    {
        var typical = WinterMaker.Synthetic(ReferenceSites.Redmond, Season, WinterKind.Typical, 4, new());
        var hard = WinterMaker.Harden([typical], new() { PowerCutHours = 6 });
        var week = hard.StressWeek!.Value;
        var clearness = WinterBuilder.DailyClearness(hard.Place, hard.Start, hard.GlobalWPerM2);
        var first = week.First / 24;
        Assert.All(Enumerable.Range(first, 3), d => Assert.InRange(clearness[d], 0.10, 0.22));
        Assert.All(Enumerable.Range(first + 4, 3), d => Assert.InRange(clearness[d], 0.60, 0.75));
        var cut = Assert.Single(hard.PowerCuts);
        Assert.Equal(6, cut.Count);
        var coldest = Enumerable.Range(hard.WarmUpHours, hard.SeasonHours).MinBy(h => hard.AirC[h]);
        Assert.InRange(coldest, cut.First, cut.First + cut.Count);
        for (var h = 0; h < hard.Hours; h++)
        {
            if (h >= week.First - 24 && h < week.First + week.Count + 24)
                continue;
            Assert.Equal(typical.AirC[h], hard.AirC[h]);
            Assert.Equal(typical.GlobalWPerM2[h], hard.GlobalWPerM2[h]);
            Assert.Equal(typical.SkyC[h], hard.SkyC[h], 1e-9);
        }

        Assert.Equal(WinterKind.Hard, hard.Kind);
        Assert.Contains(hard.Remarks, r => r.Contains("stress week", StringComparison.Ordinal));
    }

    [Fact]
    public void The_builders_own_lowest_counts()
    {
        var hard = WinterMaker.Synthetic(ReferenceSites.Chile, new(5, 1, 9, 30), WinterKind.Hard, 9, new() { HardLowestC = -14 });
        Assert.Equal(-14, hard.AirC.Min(), 0.1);
    }

    [Fact]
    public void Drawn_winters_keep_the_climate_and_change_the_weather()
    {
        var source = WinterMaker.Synthetic(ReferenceSites.Redmond, Season, WinterKind.Typical, 4, new());
        var drawn = WinterMaker.Drawn([source], 12, 8, new());
        Assert.Equal(source.AirC.Average(), drawn.Average(w => w.AirC.Average()), 1.0);
        Assert.Equal(source.GlobalWPerM2.Average(), drawn.Average(w => w.GlobalWPerM2.Average()), 0.05 * source.GlobalWPerM2.Average());
        Assert.True(drawn.Min(w => w.AirC.Min()) < source.AirC.Min());
        Assert.NotEqual(drawn[0].AirC, drawn[1].AirC);
        Assert.Equal(drawn[3].AirC, WinterMaker.Drawn([source], 12, 8, new())[3].AirC);
        Assert.All(drawn, w => Assert.Equal(source.Hours, w.Hours));
        var figures = drawn.Average(w => WinterFigures.Of(w).LagMean);
        Assert.InRange(figures, 0.45, 0.85);
    }

    [Fact]
    public void Winters_are_drawn_from_weather_of_one_endless_spell_too()
    {
        // Air that never moves has no cold and no mild days: the whole winter is one spell.
        var source = WinterMaker.Synthetic(ReferenceSites.Redmond, Season, WinterKind.Typical, 4, new());
        Array.Fill(source.AirC, 1.5);
        var drawn = WinterMaker.Drawn([source], 3, 8, new());
        Assert.All(drawn, w => Assert.Equal(source.Hours, w.AirC.Length));
        Assert.All(drawn, w => Assert.All(w.AirC, a => Assert.True(double.IsFinite(a))));
    }

    [Fact]
    public void The_lowest_hour_lies_in_the_stress_week()
    {
        var hard = WinterMaker.Synthetic(ReferenceSites.Redmond, Season, WinterKind.Hard, 4, new());
        var week = hard.StressWeek!.Value;
        Assert.Equal(7 * 24, week.Count);
        Assert.InRange(Enumerable.Range(0, hard.Hours).MinBy(h => hard.AirC[h]), week.First, week.First + week.Count);
    }
}
