using CsCheck;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Page;
using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class HeatFlowTests
{
    [Fact]
    public void What_comes_in_is_what_goes_out_whichever_way_each_flow_runs() =>
        Gen.Double[-900, 900].Array[8].Sample(either =>
        {
            var flows = HeatFlow.Of(Layout(either));
            var (into, outOf) = (flows.Where(f => f.ComesIn).Sum(f => f.Kwh), flows.Where(f => !f.ComesIn).Sum(f => f.Kwh));
            return flows.All(f => f.Kwh >= 0) && Math.Abs(into - outOf) < 1e-6;
        });

    [Fact]
    public void Every_flow_has_words_of_its_own()
    {
        var flows = HeatFlow.Of(InventedLayouts.Bare);
        Assert.All(flows, f => Assert.NotEmpty(f.Name));
        Assert.Equal(flows.Count, flows.DistinctBy(f => f.Name).Count());
    }

    [Fact]
    public void Heat_that_only_moves_within_the_plant_is_neither_in_nor_out() =>
        Assert.DoesNotContain(HeatFlow.Of(InventedLayouts.Bare), f => f.Id == SolarFlows.Release.Id);

    [Theory]
    [InlineData(-500, 10_000, 9500, 0)]
    [InlineData(-500, 200, 0, 300)]
    public void Through_the_cover_is_one_flow_net_of_air_and_sky(double toAir, double toSky, double goesOut, double comesIn)
    {
        // The sky has 10 000 of its own in these books.
        var flows = HeatFlow.Of(Layout([toAir, toSky - 10_000, 0, 0, 0, 0, 0, 0]));
        Assert.Equal(goesOut, flows.Single(f => f.Name == "out through the cover").Kwh, 1e-9);
        Assert.Equal(comesIn, flows.Single(f => f.Name == "in through the cover").Kwh, 1e-9);
        Assert.DoesNotContain(flows, f => f.Name.Contains("sky", StringComparison.Ordinal));
    }

    // Sun through the cover closes the balance; it may come out below zero here, so a constant is given to it and to the sky.
    private static JudgedLayout Layout(double[] outwards)
    {
        var books = new EnergyBooks(
            [
                new(HouseFlows.Sun, 10_000 + outwards.Sum()),
                new(HouseFlows.CoverToAir, outwards[0]),
                new(HouseFlows.CoverToSky, 10_000 + outwards[1]),
                new(HouseFlows.Leakage, outwards[2]),
                new(HouseFlows.Vents, outwards[3]),
                new(HouseFlows.Ground, outwards[4]),
                new(SolarFlows.CollectorLoss, outwards[5]),
                new(SolarFlows.PipeLoss, outwards[6]),
                new(SolarFlows.Release, 123),
            ],
            [],
            [new(HouseFlows.House, outwards[7] / 3), new(SolarFlows.Loop, outwards[7] * 2 / 3)]);
        return InventedLayouts.Bare with { Winters = [.. InventedLayouts.Bare.Winters.Select(w => w with { Outcome = w.Outcome with { Books = books } })] };
    }
}
