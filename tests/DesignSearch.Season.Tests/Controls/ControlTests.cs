using DesignSearch.Season.Controls;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>The small controls of the house, each by itself.</summary>
public sealed class ControlTests
{
    [Theory]
    // 200 W/K hold the air at rest/200 °C while the vents are shut; they open from 25 °C, 600 W/K wide.
    [InlineData(4800, 10, 0)]
    [InlineData(5000, 10, 0)]
    [InlineData(6500, 10, 100)]
    [InlineData(50000, 10, 600)]
    [InlineData(6500, 30, 600)]
    public void Vents_open_as_far_as_brings_the_air_back(double rest, double outsideC, double expected)
    {
        var vents = new VentControl<Lane1>(Lane1.Of(600), Lane1.Of(25));
        vents.Hour(Lane1.Of(outsideC));
        Assert.Equal(expected, At(vents.Conductance(Lane1.Of(200), Lane1.Of(rest))), 9);
        if (expected is > 0 and < 600)
            Assert.Equal(25, (rest + (expected * outsideC)) / (200 + expected), 9);
    }

    [Theory]
    [InlineData(1, 1500)]
    [InlineData(0, 0)]
    public void A_heater_gives_its_power_while_there_are_mains(double power, double expected)
    {
        var heater = new HeaterControl<Lane1>(Lane1.Of(1500), Lane1.Of(4));
        heater.Hour(power);
        Assert.Equal((expected, 4), (At(heater.NowW), At(heater.SetC)));
    }

    [Theory]
    // Set at 5 °C: it stops 1 K above that, and starts 2 K higher.
    [InlineData(5.9, false, 1, 0)]
    [InlineData(7, false, 1, 0)]
    [InlineData(7.9, false, 1, 0)]
    [InlineData(8.1, false, 1, 1)]
    [InlineData(7, true, 1, 1)]
    [InlineData(6.1, true, 1, 1)]
    [InlineData(5.9, true, 1, 0)]
    [InlineData(40, true, 0, 0)]
    public void A_tank_thermostat_lets_the_release_run(double topC, bool ran, double power, double expected)
    {
        var terms = HouseTerms.Nothing with { Release = 150, ReleaseSetC = 5, FanW = 40, ReleaseStopC = 6, ReleaseStartC = 8 };
        var release = new ReleaseControl<Lane1>(Lift.Of<HouseTerms<double>, HouseTerms<Lane1>, Lane1>([terms]));
        release.Hour(1);
        release.Enabled(Lane1.Of(ran ? 20 : 0), Lane1.Of(-9));
        release.Hour(power);
        var (top, enabled) = (Lane1.Of(topC), release.Enabled(Lane1.Of(topC), Lane1.Of(4)));
        Assert.Equal(0, At(release.Enabled(Lane1.Of(topC), Lane1.Of(topC))));
        Assert.Equal(expected, At(enabled), 12);
        Assert.Equal(expected * 150, At(release.Conductance(enabled)), 12);
        Assert.Equal(expected * ((150 * topC) + 40), At(release.Source(top, enabled, release.Conductance(enabled))), 9);
        Assert.Equal(10, At(release.FanW(Lane1.Of(0.25))));
    }

    [Fact]
    public void A_release_that_stops_lower_leaves_less_frost_and_a_colder_tank()
    {
        var forcing = TestWinter.Forcing(TestWinter.Make(days: 60, warmUpDays: 10, meanC: -1, seed: 3));
        (double Frost, double Released) Of(double stopK)
        {
            var plant = TestLayout.Solar(6);
            var outcome = SeasonSimulator.Run(
                forcing, new LayoutCase(plant with { Release = plant.Release with { StopAboveSetK = stopK }, Heater = HeaterNumbers.None }, TestWinter.Plane(forcing.Winter, 60)));
            return (outcome.FrostDegreeHoursKh, outcome.ReleasedKwh);
        }

        var (usual, low) = (Of(1), Of(-3));
        Assert.True(low.Frost < 0.99 * usual.Frost && low.Released > usual.Released, $"{usual} {low}");
    }

    private static double At(in Lane1 lane) => Pack.At(lane, 0);
}
