using DesignSearch.Parts.Electrics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class ElectricsTests
{
    [Theory]
    [InlineData(0.5, 36.0, 39.0)]
    [InlineData(0.75, 24.5, 26.0)]
    [InlineData(1, 18.1, 19.5)]
    [InlineData(1.5, 12.1, 13.3)]
    [InlineData(2.5, 7.41, 7.98)]
    [InlineData(4, 4.61, 4.95)]
    [InlineData(6, 3.08, 3.30)]
    [InlineData(10, 1.83, 1.91)]
    [InlineData(16, 1.15, 1.21)]
    [InlineData(25, 0.727, 0.780)]
    public void Copper_resistance_is_that_of_the_standard(double mm2, double fixedWire, double flexible)
    {
        var id = FormattableString.Invariant($"electrics J1 {mm2} mm2");
        Validation.Equal(id + " class 2", "resistance at 20 C [ohm/km]", fixedWire, 1000 * CopperResistance.OhmPerM(mm2, 2), 1e-9, "IEC 60228, plain copper", "CopperResistance.OhmPerM");
        Validation.Equal(id + " class 5", "resistance at 20 C [ohm/km]", flexible, 1000 * CopperResistance.OhmPerM(mm2, 5), 1e-9, "IEC 60228, plain copper", "CopperResistance.OhmPerM");
        Assert.Equal(CopperResistance.OhmPerM(mm2, 2), CopperResistance.OhmPerM(mm2, 1));
    }

    [Fact]
    public void Warm_copper_resists_more()
    {
        var factor = CopperResistance.OhmPerM(2.5, 2, 50) / CopperResistance.OhmPerM(2.5, 2);
        Validation.Equal("electrics J1 warm", "resistance at 50 C over 20 C [1]", 1.1179, factor, 1e-4, "temperature coefficient of copper 0.00393 1/K", "CopperResistance.OhmPerM");
        Validation.Within("electrics J1 warm table", "resistance at 50 C over 20 C [1]", 1.115, 1.125, factor, "IEC 60228 correction 1/0.893 = 1.120", "CopperResistance.OhmPerM");
    }

    [Fact]
    public void Unlisted_conductors_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CopperResistance.OhmPerM(3, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => CopperResistance.OhmPerM(2.5, 3));
    }

    [Theory]
    [InlineData(2.5, 1.38)]
    [InlineData(1.5, 2.30)]
    public void Published_drop_is_met(double mm2, double expected) =>
        Validation.Equal(FormattableString.Invariant($"electrics J2 published {mm2} mm2"), "drop, 5 m out and back, 20 A [V]", expected, CableDrop.Volts(5, 20, 17.241e-3 / mm2), 0.005, "published forum calculation with 17.241 ohm mm2/km", "CableDrop.Volts");

    [Theory]
    [InlineData(2.5, 2, 3, 25, 20, 1.1115)]
    [InlineData(2.5, 2, 3, 25, 50, 1.2425)]
    [InlineData(4, 5, 5, 20, 20, 0.990)]
    [InlineData(1.5, 5, 2, 40, 20, 2.128)]
    [InlineData(6, 5, 8, 15, 20, 0.792)]
    public void Recomputed_drop_is_met(double mm2, int conductorClass, double amps, double length, double celsius, double expected) =>
        Validation.Equal(
            FormattableString.Invariant($"electrics J2 {mm2} mm2 class {conductorClass} {amps} A {length} m {celsius} C"),
            "drop [V]",
            expected,
            CableDrop.Volts(length, amps, CopperResistance.OhmPerM(mm2, conductorClass, celsius)),
            0.001 * expected,
            "dV = 2 L I R' with IEC 60228, recomputed",
            "CableDrop.Volts");

    [Fact]
    public void Limits_of_extra_low_voltage()
    {
        Validation.Equal("electrics J3 alternating", "largest extra-low voltage, a.c. r.m.s. [V]", 50, ExtraLowVoltage.AlternatingV, 0, "IEC vocabulary", "ExtraLowVoltage");
        Validation.Equal("electrics J3 direct", "largest extra-low voltage, ripple-free d.c. [V]", 120, ExtraLowVoltage.DirectV, 0, "IEC vocabulary", "ExtraLowVoltage");
        Assert.True(ExtraLowVoltage.Includes(24, isAlternating: false));
        Assert.True(ExtraLowVoltage.Includes(50, isAlternating: true));
        Assert.False(ExtraLowVoltage.Includes(60, isAlternating: true));
        Assert.False(ExtraLowVoltage.Includes(230, isAlternating: false));
    }
}
