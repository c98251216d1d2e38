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

    [Fact]
    public void A_cover_that_takes_heat_from_the_air_is_shown_as_a_gain()
    {
        var flows = HeatFlow.Of(Layout([-500, 0, 0, 0, 0, 0, 0, 0]));
        Assert.Equal(500, flows.Single(f => f.Name == "from the outside air into the cover").Kwh, 1e-9);
        Assert.Equal(0, flows.Single(f => f.Name == "through the cover to the outside air").Kwh);
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
