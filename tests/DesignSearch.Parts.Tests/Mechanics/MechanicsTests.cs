using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class MechanicsTests
{
    // Air at 15 °C and sea level [kg/m³].
    private const double SeaLevelKgPerM3 = 1.226;

    [Fact]
    public void Torque_units_follow_their_definition()
    {
        const string Source = "NIST SP 811 appendix B.8; SI definition of standard gravity";
        Validation.Equal("mechanics I1 one kgf cm", "torque [N m]", 0.0980665, TorqueUnits.ToNm(1, TorqueUnit.KgfCm), 1e-12, Source, "TorqueUnits.ToNm");
        Validation.Equal("mechanics I1 thirty kgf cm", "torque [N m]", 2.941995, TorqueUnits.ToNm(30, TorqueUnit.KgfCm), 1e-9, Source, "TorqueUnits.ToNm");
        Assert.Equal(12, TorqueUnits.ToNm(12, TorqueUnit.Nm));
    }

    // Common practice, no source: the trade's kg-cm means kgf·cm; 35 of them are 3.43 N·m.
    [Fact]
    public void Trade_unit_is_the_weight_of_a_kilogram() => Assert.Equal(3.43, TorqueUnits.ToNm(35, TorqueUnit.KgCm), 2);

    [Theory]
    [InlineData(10, 61.3)]
    [InlineData(15, 137.9)]
    [InlineData(20, 245.2)]
    [InlineData(25, 383.1)]
    [InlineData(30, 551.7)]
    public void Wind_pressure_of_standard_air(double wind, double expected) =>
        Validation.Equal(FormattableString.Invariant($"mechanics I2 wind {wind} m/s"), "gust pressure at 1.226 kg/m3 [Pa]", expected, WindForce.PressurePa(wind, SeaLevelKgPerM3), 0.06, "q = 0.613 v2, recomputed", "WindForce.PressurePa");

    [Theory]
    [InlineData(20, 250.0)]
    [InlineData(25, 390.625)]
    public void Wind_pressure_of_the_code(double wind, double expected) =>
        Validation.Equal(FormattableString.Invariant($"mechanics I2b wind {wind} m/s"), "gust pressure at 1.25 kg/m3 [Pa]", expected, WindForce.PressurePa(wind), 1e-9, "EN 1991-1-4, basic velocity pressure", "WindForce.PressurePa");

    [Fact]
    public void Imbalance_of_a_weight() =>
        Validation.Equal("mechanics I4 imbalance", "40 kg, 0.15 m off, at 45 deg [N m]", 41.61, ShaftMoments.ImbalanceNm(40, 0.15, 45), 0.005, "statics, recomputed", "ShaftMoments.ImbalanceNm");

    [Theory]
    [InlineData("ball", 0.0013, 0.050, 0.065)]
    [InlineData("plain", 0.1, 0.050, 5.0)]
    public void Bearing_friction(string bearing, double coefficient, double diameter, double expected) =>
        Validation.Equal("mechanics I5 bearing " + bearing, "friction moment at 2000 N [N m]", expected, ShaftMoments.BearingFrictionNm(coefficient, 2000, diameter), 1e-9, "M = mu P d/2; coefficients of the JTEKT-Koyo and RoyMech tables", "ShaftMoments.BearingFrictionNm");
}
