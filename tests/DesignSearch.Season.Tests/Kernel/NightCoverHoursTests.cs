using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>How long in an hour a night cover is closed, and what a night costs in which nobody draws it.</summary>
public sealed class NightCoverHoursTests
{
    // Zenith angles at the middles of hours: the sun crosses the horizon where the straight line does.
    [Theory]
    [InlineData(new[] { 120.0, 110, 100 }, 1)]
    [InlineData(new[] { 80.0, 70, 60 }, 0)]
    [InlineData(new[] { 100.0, 90, 80 }, 0.5)]
    [InlineData(new[] { 102.0, 92, 82 }, 0.7)]
    [InlineData(new[] { 80.0, 87, 95 }, 0.125)]
    public void A_cover_is_closed_while_the_sun_is_down(double[] zenithDeg, double share) => Assert.Equal(share, WinterForcing.Dark(zenithDeg, 1), 1e-12);

    [Fact]
    public void At_the_ends_of_a_winter_the_hour_stands_for_its_neighbour() =>
        Assert.Equal((0.9, 0.0), (WinterForcing.Dark([92, 87], 0), WinterForcing.Dark([92, 87], 1)));

    // Light of 0, 20, 60 W/m² at the middles: it runs from 10 by 20 to 40, and passes 30 in the middle of the second half.
    [Fact]
    public void A_motor_closes_the_cover_while_it_is_dim()
    {
        var winter = MadeWinter.Of(12, 10, meanC: -2);
        var light = winter.GlobalWPerM2.ToArray();
        var at = Array.FindIndex(light, 24 * 10, w => w == 0) + 2;
        (light[at - 1], light[at], light[at + 1]) = (0, 20, 60);
        var up = winter.SunZenithDeg.ToArray();
        (up[at - 1], up[at], up[at + 1]) = (80, 70, 60);
        var hours = WinterForcing.Prepare(winter with { GlobalWPerM2 = light, SunZenithDeg = up }, new double[winter.Hours], SeasonAssumptions.Default).Hours;
        Assert.Equal((0.0, 0.75), (hours[at].Dark, Math.Round(hours[at].Dim, 12)));
        foreach (var hour in hours)
            Assert.InRange(hour.Dim, hour.Dark, 1);

        double Frost(CoverDrawing drawn) => SeasonSimulator.Run(
            MadeWinter.Forcing(winter), new LayoutCase(TestLayout.Bare with { House = TestLayout.House with { NightCoverResistanceM2KPerW = 0.4, NightCoverDrawnBy = drawn } }, null)).FrostDegreeHoursKh;
        Assert.True(Frost(CoverDrawing.Sensor) < Frost(CoverDrawing.Hand));
        Assert.True(Frost(CoverDrawing.Hand) < Frost(CoverDrawing.None));
    }

    /// <summary>47° N, 10° E, UTC+1, 15 December: declination −23.27°, equation of time +4.9 min (almanac, from memory); the sensor's light stands 3.81° high.</summary>
    [Fact]
    public void A_timer_closes_the_cover_by_the_clock_of_the_month()
    {
        var winter = MadeWinter.Of(60);
        var hours = WinterForcing.Prepare(winter, new double[winter.Hours], SeasonAssumptions.Default).Hours.ToArray();
        // cos ω = (sin 3.81° + sin 47° · sin 23.27°) / (cos 47° · cos 23.27°) gives 3.70 h either side of 12:15: 8:33 and 15:57, to ten minutes 8:30 and 16:00.
        double[] Day(int day) => [.. hours.Skip(24 * day).Take(24).Select(h => h.Clock)];
        double[] expected = [.. Enumerable.Range(0, 24).Select(h => h is < 8 or > 15 ? 1.0 : h == 8 ? 0.5 : 0)];
        Assert.All(new[] { 30, 44, 59 }, day => Assert.Equal(expected, Day(day), new Near()));
        Assert.NotEqual(Day(29), Day(30));
    }

    private sealed class Near : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) < 1e-6;

        public int GetHashCode(double obj) => 0;
    }

    [Fact]
    public void A_night_in_which_nobody_draws_the_cover_is_colder_and_no_other()
    {
        var winter = MadeWinter.Of(40, 10, meanC: -2);
        var open = winter with { CoverLeftOpen = [new HourSpan(24 * 25, 24)] };
        var plant = TestLayout.Bare with { House = TestLayout.House with { NightCoverResistanceM2KPerW = 0.4 } };
        double[] Nights(Winter w)
        {
            var air = new List<double>();
            SeasonSimulator.Run(MadeWinter.Forcing(w), new LayoutCase(plant, null), row => air.Add(row.AirMeanC));
            return [.. air];
        }

        var (kept, left) = (Nights(winter), Nights(open));
        Assert.Equal(kept.Take(24 * 25), left.Take(24 * 25));
        Assert.True(kept.Zip(left, (a, b) => a - b).Skip(24 * 25).Take(24).Max() > 0.5);
    }
}
