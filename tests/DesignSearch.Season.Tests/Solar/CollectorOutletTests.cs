using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>Rows C1 of the check values that the season's own loop reaches by itself: outlet, rest and warming.</summary>
public sealed class CollectorOutletTests
{
    private const string Sheet = "Solar Keymark data sheet DS 3663, CENER report 30.4062.0, 2022";

    // No exchanger, no pipes; a tank that nothing moves.
    private static LoopTerms<double> OneSquareMetre => LoopTerms.None with
    {
        LayerStore = 1e12,
        AreaM2 = 1,
        Eta0 = 0.739,
        Diffuse = 0.91,
        Loss1 = 3.51,
        Loss2 = 0.017,
        CollectorStore = 10620,
        CeilingC = 1000,
        HoldK = 1000,
    };

    [Fact]
    public void Outlet_temperature_of_two_square_metres()
    {
        // A 2.0 m², G 700 W/m² hemispherical, Ta 5, Tin 30, 0.02 kg/s of water at 4180 J/(kg·K), mean of inlet and outlet.
        var loop = TestLoop.At(30, OneSquareMetre with { AreaM2 = 2, Loss1 = 7.02, Loss2 = 0.034, CollectorStore = 21240, Flow = 0.02 * 4180, HoldK = -1000 });
        TestLoop.Run(ref loop, 2000, 5, 700 * 0.85, 700 * 0.15);
        TestLoop.Run(ref loop, 1, 5, 700 * 0.85, 700 * 0.15);
        Assert.Equal(1, Pack.At(loop.Pump, 0));
        var rise = Pack.At(loop.Collector, 0) - 30;
        Validation.Equal("collector C1 outlet above inlet", "K", 9.358, rise, 9.358 * 0.002, Sheet + ", recomputed", "LoopBlock");
        Validation.Equal("collector C1 heat of two square metres", "W", 782.3, Pack.At(loop.SumToTank, 0), 782.3 * 0.002, Sheet + ", recomputed", "LoopBlock");
    }

    [Fact]
    public void Stagnates_where_the_efficiency_curve_says()
    {
        var loop = TestLoop.At(30, OneSquareMetre);
        TestLoop.Run(ref loop, 5000, 30, 850, 150);
        Assert.Equal(0, Pack.At(loop.Pump, 0));
        Validation.Equal("collector C1 stagnation", "°C", 158.15, Pack.At(loop.Collector, 0), 0.02, "root of the efficiency curve of " + Sheet, "LoopBlock");
    }

    [Fact]
    public void Takes_its_capacity_to_warm()
    {
        // No loss: all that is absorbed warms the collector. A thousand watts for as long as 20 K take.
        var loop = TestLoop.At(10, OneSquareMetre with { Eta0 = 1, Loss1 = 0, Loss2 = 0 }, stepS: 1);
        TestLoop.Run(ref loop, 100, 10, 1000);
        var warming = 100.0 / 3600 * 20 / (Pack.At(loop.Collector, 0) - 10);
        Validation.Equal("collector C1 heat to warm by 20 K", "kWh/m²", 0.0590, warming, 0.0001, Sheet, "LoopBlock");
    }
}
