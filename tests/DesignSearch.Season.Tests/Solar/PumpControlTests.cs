using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>The pump's control by itself, as a table. Hold 4 K over the bottom, ceiling 60 °C, no start above 90 °C; a collector of 20 W/K at rest, water of 100 W/K.</summary>
public sealed class PumpControlTests
{
    private static readonly PumpControl<Lane1> Control = new(Of(4), Of(60), Of(90), SeasonAssumptions.Default);

    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(20, 1, 0)]
    [InlineData(25, 1, 0.25)]
    [InlineData(40, 1, 1)]
    [InlineData(900, 1, 1)]
    [InlineData(900, 0, 0)]
    public void Light_and_mains_allow(double light, double power, double expected) =>
        Assert.Equal(expected, Pack.At(Control.Allowed(Of(light), power), 0), 1e-12);

    // Wanted 24 °C over a bottom of 20: what the row holds beyond 20 × 24 = 480 W goes to water that is warmed from back to 24.
    [Theory]
    [InlineData("colder than wanted", 1, 400, 20, 20, 30, 0)]
    [InlineData("just as warm", 1, 480, 20, 20, 30, 0)]
    [InlineData("a hundred watts to spare over 4 K", 1, 580, 20, 20, 30, 0.25)]
    [InlineData("back cooler, so less flow takes it", 1, 580, 16, 20, 30, 0.125)]
    [InlineData("more than all the flow takes", 1, 5000, 20, 20, 30, 1)]
    [InlineData("back nearly as warm: the least lift", 1, 481, 23.99, 20, 30, 0.2)]
    [InlineData("back warmer than wanted: the least lift", 1, 481, 40, 20, 30, 0.2)]
    [InlineData("half dark", 0.5, 580, 20, 20, 30, 0.125)]
    [InlineData("dark", 0, 5000, 20, 20, 30, 0)]
    [InlineData("top half a kelvin under its ceiling", 1, 5000, 20, 20, 59.5, 0.25)]
    [InlineData("top at its ceiling", 1, 5000, 20, 20, 60, 0)]
    [InlineData("top above it", 1, 5000, 20, 20, 70, 0)]
    public void Duty(string state, double allowed, double given, double back, double bottom, double top, double expected)
    {
        var duty = Pack.At(Control.Duty(Of(allowed), Of(given), Of(20), Of(100), Of(back), Of(bottom), Of(top), Of(30)), 0);
        Assert.True(Math.Abs(duty - expected) < 1e-12, FormattableString.Invariant($"{state}: {duty}, not {expected}"));
    }

    // No start above 90 °C at the collector, over the same two kelvins as the ceiling; whichever is nearer decides.
    [Theory]
    [InlineData(30, 50, 1)]
    [InlineData(88, 50, 1)]
    [InlineData(89.5, 50, 0.25)]
    [InlineData(90, 50, 0)]
    [InlineData(190, 50, 0)]
    [InlineData(89, 59.5, 0.25)]
    public void A_collector_that_stood_in_the_sun_is_not_started(double collector, double top, double expected) =>
        Assert.Equal(expected, Pack.At(Control.Duty(Of(1), Of(5000), Of(20), Of(100), Of(20), Of(20), Of(top), Of(collector)), 0), 1e-12);

    [Fact]
    public void Holds_a_quarter_of_the_way_from_stop_to_start()
    {
        Assert.Equal(4.25, PumpAssumptions.HoldK(3, 8, SeasonAssumptions.Default));
        Assert.Equal(8, PumpAssumptions.HoldK(3, 8, SeasonAssumptions.Default.With(PumpAssumptions.HoldShare, 1)));
    }

    [Fact]
    public void Every_figure_is_an_assumption()
    {
        var dim = Other(PumpAssumptions.LightGate, 30, PumpAssumptions.LightBand, 10);
        Assert.Equal(0.5, Pack.At(dim.Allowed(Of(35), 1), 0), 1e-12);
        var soft = Other(PumpAssumptions.CeilingFade, 4, PumpAssumptions.LeastLift, 0.1);
        Assert.Equal(0.25, Pack.At(soft.Duty(Of(1), Of(5000), Of(20), Of(100), Of(20), Of(20), Of(59), Of(30)), 0), 1e-12);
        Assert.Equal(0.1, Pack.At(soft.Duty(Of(1), Of(481), Of(20), Of(100), Of(40), Of(20), Of(30), Of(30)), 0), 1e-12);
    }

    private static PumpControl<Lane1> Other(AssumptionEntry one, double first, AssumptionEntry two, double second) =>
        new(Of(4), Of(60), Of(90), SeasonAssumptions.Default.With(one, first).With(two, second));

    private static Lane1 Of(double x) => Lane1.Of(x);
}
