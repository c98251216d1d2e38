using CsCheck;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Heaters;
using DesignSearch.Reporting.Page;
using DesignSearch.Season;
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
    public void Every_flow_has_a_letter_of_its_own_and_none_that_looks_like_a_figure()
    {
        var letters = HeatFlow.Of(InventedLayouts.Bare).Select(f => f.Letter).ToList();
        Assert.Equal(letters.Count, letters.Distinct().Count());
        Assert.DoesNotContain(letters, l => l is 'I' or 'O');
    }

    [Fact]
    public void A_cover_that_takes_heat_from_the_air_is_shown_as_a_gain()
    {
        var flows = HeatFlow.Of(Layout([-500, 0, 0, 0, 0, 0, 0, 0]));
        Assert.Equal(500, flows.Single(f => f.Name == "from the outside air into cover and solid wall").Kwh, 1e-9);
        Assert.Equal(0, flows.Single(f => f.Name == "through cover and solid wall to the outside air").Kwh);
    }

    // Sun through the cover closes the balance; it may come out below zero here, so a constant is given to it and to the sky.
    private static JudgedLayout Layout(double[] outwards)
    {
        var ledger = new EnergyLedger
        {
            SunIntoHouse = 10_000 + outwards.Sum(),
            SunIntoCollector = 0,
            Heater = 0,
            Auxiliary = 0,
            CoverToAir = outwards[0],
            CoverToSky = 10_000 + outwards[1],
            Leakage = outwards[2],
            Vents = outwards[3],
            Ground = outwards[4],
            CollectorLoss = outwards[5],
            PipeLoss = outwards[6],
            StoredInHouse = outwards[7] / 3,
            StoredInLoop = outwards[7] * 2 / 3,
            Throughput = 1,
            Residual = 0,
        };
        return InventedLayouts.Bare with { Winters = [.. InventedLayouts.Bare.Winters.Select(w => w with { Outcome = w.Outcome with { Ledger = ledger } })] };
    }
}
