using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Electrics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Published figures of wiring, worked out by what the program itself calls.</summary>
public sealed class WiringExampleTests
{
    private const string Warm = "IEC 60228 class 1 and 5 at 20 °C, copper's 0.00393 a kelvin to 70 °C";

    [Theory]
    [InlineData(0.5, 1, 43.1)]
    [InlineData(1.5, 1, 14.5)]
    [InlineData(2.5, 1, 8.87)]
    [InlineData(4, 1, 5.52)]
    [InlineData(6, 5, 3.95)]
    [InlineData(10, 5, 2.29)]
    public void Warm_copper(double mm2, int kind, double ohmPerKm) =>
        Validation.Equal(FormattableString.Invariant($"wiring copper {mm2} mm2 class {kind} at 70 C"), "resistance [Ω/km]", ohmPerKm, 1000 * CopperResistance.OhmPerM(mm2, kind, CopperResistance.WarmC), 0.051, Warm, "CopperResistance.OhmPerM");

    [Fact]
    public void Drop_of_a_mains_cable()
    {
        var ohm = CopperResistance.OhmPerM(2.5, 1, CopperResistance.WarmC);
        Validation.Equal("wiring drop 10 A 40 m 2.5 mm2", "share of 230 V [%]", 3.13, 100 * CableDrop.Volts(40, 10, ohm) / 230, 0.06, "IEC 60364-5-52 Annex G, 0.0225 Ω·mm²/m for copper in use", "CableDrop.Volts");
    }

    [Theory]
    [InlineData(6, 5, 7.28)]
    [InlineData(10, 5, 4.37)]
    [InlineData(16, 5, 2.73)]
    [InlineData(25, 5, 1.75)]
    [InlineData(6, 10, 3.64)]
    [InlineData(16, 10, 1.37)]
    [InlineData(32, 10, 0.68)]
    public void Largest_loop_of_a_breaker(double amperes, double times, double ohm) =>
        Validation.Equal(FormattableString.Invariant($"wiring loop {(times == 5 ? "B" : "C")}{amperes}"), "largest loop impedance [Ω]", ohm, EarthFault.LargestLoopOhm(230, amperes, times), 0.006, "BS 7671 tables of largest loop impedances, 0.95 of the voltage", "EarthFault.LargestLoopOhm");

    [Fact]
    public void A_dead_short()
    {
        Validation.Equal("wiring short 0.35 + 1.446 ohm", "current [A]", 128, EarthFault.ShortA(230, EarthFault.LoopOhm(0.35, 1, 0.723)), 0.5, "electricians' worked example of a loop: 1.796 Ω at 230 V", "EarthFault.ShortA");
        foreach (var (metres, ohm) in new[] { (40, 1.059), (60, 1.414), (100, 2.123) })
        {
            var ours = EarthFault.LoopOhm(0.35, metres, CopperResistance.OhmPerM(2.5, 1, CopperResistance.WarmC));
            Validation.Equal(FormattableString.Invariant($"wiring loop of {metres} m of 2.5 mm2"), "loop impedance [Ω]", ohm, ours, 0.001, "0.35 Ω before it, IEC 60228 at 70 °C (analytic)", "EarthFault.LoopOhm");
        }
    }

    [Theory]
    [InlineData(0.03, 1667)]
    [InlineData(0.1, 500)]
    [InlineData(0.3, 167)]
    public void Largest_earth_behind_a_residual_current_device(double amperes, double ohm) =>
        Validation.Equal(FormattableString.Invariant($"wiring earth rod {1000 * amperes:0} mA"), "largest resistance [Ω]", ohm, EarthFault.LargestRodOhm(amperes), 0.5, "IEC 60364-4-41, 50 V over the residual current", "EarthFault.LargestRodOhm");

    [Fact]
    public void Time_lag_fuses()
    {
        foreach (var (times, seconds) in new[] { (1.5, 3600.0), (2.75, 0.6), (4, 0.15), (10, 0.02), (3.81, 0.18), (3.0, 0.43) })
            Validation.Equal(FormattableString.Invariant($"wiring fuse at {times} times"), "sure to hold [s]", seconds, TimeLagFuse.HoldsS(times), 0.01 * seconds + 0.005, "IEC 60127-2 sheet 3, straight on logarithmic scales between its points", "TimeLagFuse.HoldsS");
        Validation.Equal("wiring fuse start of 12 A", "size for 2 A that start with 12 A for 0.3 s [A]", 4, TimeLagFuse.SizeFor(2, 12), 0, "IEC 60127-2 sheet 3", "TimeLagFuse.SizeFor");
        Validation.Equal("wiring fuse of 5 A running", "size for 5.00 A running [A]", 6.3, TimeLagFuse.SizeFor(5, 5), 0, "1.25 times the running current, sizes of IEC 60127-2", "TimeLagFuse.SizeFor");
        Assert.Equal(0, TimeLagFuse.HoldsS(10.1));
        Assert.Equal(0, TimeLagFuse.SizeFor(33, 33));
        Assert.All(TimeLagFuse.SizesA, size => Assert.Equal(size, TimeLagFuse.SizeFor(size / 1.25, size / 1.25)));
        Assert.Equal(1, new LowLine(24, 1, [new Circuit("lamp", 24, 12, 0, "", "")]).FuseBefore(new Circuit("lamp", 24, 12, 0, "", "")));
    }
}
