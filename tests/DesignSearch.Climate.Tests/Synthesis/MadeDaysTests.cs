using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>What is made of days has the statistics and means that it was made for, worked out by hand.</summary>
public sealed class MadeDaysTests
{
    private static readonly Place Here = new("Somewhere", 45, 7.5, 100, 1);

    // Spreads of 4 K and 2 K: the tie of mean and depth is (16 + 4 - 16)/16, of mean and clearness (-0.3 x 4 + depthClear x 2)/4; depth and clearness are tied by
    // 0.45 + 0.06 a degree, 0.1 to 0.8. What lasts from day to day: (0.6 + 1/30)/(1 - 4/30), 0.42 and 0.41;
    // the day before's clearness is tied to the mean as the day's own, and to the depth by 0.8 of it.
    [Theory]
    [InlineData(0, 0.45)]
    [InlineData(3, 0.63)]
    [InlineData(-20, 0.1)]
    [InlineData(10, 0.8)]
    public void A_chain_of_days_has_the_ties_and_the_memory_it_was_made_for(double meanC, double depthClear)
    {
        var four = Enumerable.Repeat(4.0, 12).ToArray();
        var chain = new DayChain(new(four, four, four, 0.6, -0.3), 1, 2, meanC);
        var random = new XoshiroStream(5, RandomPurpose.Wind, 0);
        var all = new List<(double Mean, double Depth, double Clear)>();
        for (var x = (Mean: 0.0, Depth: 0.0, Clear: 0.0); all.Count < 300_000; all.Add(x))
            x = chain.Next(x, random);
        double Mean(Func<int, double> of) => Enumerable.Range(1, all.Count - 1).Average(of);
        Assert.Equal(1, Mean(i => all[i].Mean * all[i].Mean), 0.02);
        Assert.Equal(1, Mean(i => all[i].Depth * all[i].Depth), 0.02);
        Assert.Equal(1, Mean(i => all[i].Clear * all[i].Clear), 0.02);
        Assert.Equal(0.25, Mean(i => all[i].Mean * all[i].Depth), 0.012);
        Assert.Equal(((-0.3 * 4) + (depthClear * 2)) / 4, Mean(i => all[i].Mean * all[i].Clear), 0.012);
        Assert.Equal(depthClear, Mean(i => all[i].Depth * all[i].Clear), 0.012);
        Assert.Equal((0.6 + (1 / 30.0)) / (1 - (4 / 30.0)), Mean(i => all[i].Mean * all[i - 1].Mean), 0.02);
        Assert.Equal(0.42, Mean(i => all[i].Depth * all[i - 1].Depth), 0.012);
        Assert.Equal(0.41, Mean(i => all[i].Clear * all[i - 1].Clear), 0.012);
        Assert.Equal(((-0.3 * 4) + (depthClear * 2)) / 4, Mean(i => all[i].Mean * all[i - 1].Clear), 0.012);
        Assert.Equal(0.8 * depthClear, Mean(i => all[i].Depth * all[i - 1].Clear), 0.012);
    }

    [Theory]
    [InlineData(10, 3, 3, 2.96)]
    [InlineData(10, 3, 5, 4)]
    [InlineData(0, 0, 0, 0.4)]
    [InlineData(5, 2, 1, 1.74)]
    public void The_depth_of_a_night_strays_as_far_as_the_lows_do_beyond_the_means(double depthK, double meanSdK, double lowSdK, double expected) =>
        Assert.Equal(expected, DayChain.DepthSdK(depthK, meanSdK, lowSdK), 1e-12);

    [Fact]
    public void Each_month_meets_its_mean_wind()
    {
        var days = Days(59);
        var wind = WindMaker.Make(days, Climate(wind: m => 2 + m), 3);
        Assert.Equal(3, wind[..(24 * 31)].Average(), 1e-9);
        Assert.Equal(4, wind[(24 * 31)..].Average(), 1e-9);
        Assert.All(wind, w => Assert.True(w > 0));
    }

    // The same chance with one day changed: that day against the others has the factor that the place's wind tells. 4.5 m/s lies half-way from calm to windy.
    [Theory]
    [InlineData(3.0, -2, 0.45, -0.24)]
    [InlineData(3.0, -9, 0.45, -0.24)]
    [InlineData(3.0, 1, 0.45, 0.12)]
    [InlineData(6.0, -2, 0.45, 0.4)]
    [InlineData(4.5, -2, 0.45, 0.08)]
    [InlineData(3.0, 0, 0.75, -0.24)]
    [InlineData(3.0, 0, 0.99, -0.24)]
    [InlineData(3.0, 0, 0.30, 0.12)]
    [InlineData(4.5, 0, 0.75, -0.12)]
    [InlineData(6.0, 0, 0.75, 0)]
    public void Cold_clear_days_are_calm_where_the_place_is_and_windy_where_cold_comes_with_a_gale(double meanMPerS, double residual, double clearness, double power)
    {
        double[] Made(double residualOfOne, double clearnessOfOne)
        {
            var days = Days(31);
            Array.Fill(days.Clearness, 0.45);
            (days.LowResidual[10], days.Clearness[10]) = (residualOfOne, clearnessOfOne);
            return WindMaker.Make(days, Climate(wind: _ => meanMPerS), 3);
        }

        var (plain, changed) = (Made(0, 0.45), Made(residual, clearness));
        for (var h = 0; h < 24; h++)
            Assert.Equal(Math.Exp(power), changed[240 + h] / plain[240 + h] * (plain[0] / changed[0]), 1e-6);
    }

    // The afternoon at its windiest, 14 to 15 h, against the night: 1.55 times where it is calm, 1.10 times where it is windy.
    [Theory]
    [InlineData(3.0, 1.55)]
    [InlineData(6.0, 1.10)]
    public void Afternoons_are_windier_most_of_all_where_it_is_calm(double meanMPerS, double times)
    {
        var days = Days(3000);
        Array.Fill(days.Clearness, 0.45);
        var wind = WindMaker.Make(days, Climate(wind: _ => meanMPerS), 3);
        double At(int hour) => Enumerable.Range(0, days.Count).Average(d => wind[(24 * d) + hour]);
        Assert.Equal(times, At(14) / ((At(1) + At(3)) / 2), 0.05);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(85)]
    public void Each_month_meets_its_mean_humidity(double percent)
    {
        var days = Days(59);
        var air = Enumerable.Range(0, 24 * 59).Select(h => 6 + (h / 24 % 5) - (5 * Math.Cos(h * Math.PI / 12))).ToArray();
        for (var d = 0; d < days.Count; d++)
            days.Low[d] = air[(24 * d)..(24 * (d + 1))].Min();
        var dew = DewMaker.Make(days, air, Climate(humidity: m => percent - m));
        double Mean(int from, int to) => Enumerable.Range(from, to - from).Average(h => Humidity.RelativePercent(air[h], dew[h]));
        Assert.Equal(percent - 1, Mean(0, 24 * 31), 0.01);
        Assert.Equal(percent - 2, Mean(24 * 31, 24 * 59), 0.01);
        Assert.All(air.Zip(dew), p => Assert.True(p.Second <= p.First));
    }

    // Of ten days of 1000 Wh each the last two are not known and do not count; a month is scaled by half to one and a half at most.
    [Theory]
    [InlineData(1.2, 1.2)]
    [InlineData(0.3, 0.5)]
    [InlineData(4.0, 1.5)]
    public void Made_light_is_scaled_to_the_month(double kwh, double factor)
    {
        var days = Days(10);
        var (global, diffuse) = (new double[240], new double[240]);
        Array.Fill(global, 1000 / 24.0);
        Array.Fill(diffuse, 5);
        Array.Fill(global, 900, 192, 48);
        CloudLight.ScaleToMonths(days, global, diffuse, Climate(light: _ => kwh), [.. Enumerable.Range(0, 10).Select(d => d < 8)]);
        Assert.All(global[..192], g => Assert.Equal(factor * 1000 / 24, g, 1e-9));
        Assert.All(global[192..], g => Assert.Equal(factor * 900, g, 1e-9));
        Assert.All(diffuse, d => Assert.Equal(factor * 5, d, 1e-9));
        double[] dark = new double[240];
        CloudLight.ScaleToMonths(days, dark, diffuse, Climate(light: _ => kwh), [.. Enumerable.Repeat(true, 10)]);
        Assert.All(dark, g => Assert.Equal(0, g));
    }

    // Monthly means of 24 h of the same sun: at the equinox on the equator twelve hours up, noon at 12 less the place's hours east of its zone.
    [Fact]
    public void The_sun_of_a_day_rises_and_sets_about_its_noon()
    {
        var equator = new SyntheticDays(new("Nowhere", 0, 7.5, 0, 1), new DateTime(2021, 3, 20), 1);
        // Equation of time on 20 March: -7.5 min (from memory, to half a minute). Refraction and the sun's disc add seven minutes to the day at the most.
        var noon = (equator.Sunrise[0] + equator.Sunset[0]) / 2;
        Assert.Equal(12 + 0.5 + (7.5 / 60), noon, 0.01);
        Assert.InRange(equator.Sunset[0] - equator.Sunrise[0], 11.98, 12.13);
        var polar = new SyntheticDays(new("North", 80, 15, 0, 1), new DateTime(2021, 12, 21), 1);
        Assert.Equal(2, polar.Sunset[0] - polar.Sunrise[0], 1e-9);
        var light = new SyntheticDays(new("North", 80, 15, 0, 1), new DateTime(2021, 6, 21), 1);
        Assert.Equal(22, light.Sunset[0] - light.Sunrise[0], 1e-9);
    }

    private static SyntheticDays Days(int count) => new(Here, new DateTime(2021, 1, 1), count);

    private static MonthlyClimate Climate(Func<int, double>? wind = null, Func<int, double>? humidity = null, Func<int, double>? light = null) =>
        new(Here, [.. Enumerable.Range(1, 12).Select(m => new MonthMeans(2, -3, light?.Invoke(m) ?? 1.5, wind?.Invoke(m) ?? 3, humidity?.Invoke(m) ?? 80))]);
}
