using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Solar;
using DesignSearch.Physics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class MechanicsTests
{
    [Fact]
    public void Torque_units_follow_their_definition()
    {
        const string Source = "NIST SP 811 appendix B.8; SI definition of standard gravity";
        Validation.Equal("mechanics I1 one kgf cm", "torque [N m]", 0.0980665, TorqueUnits.ToNm(1, TorqueUnit.KgfCm), 1e-12, Source);
        Validation.Equal("mechanics I1 thirty kgf cm", "torque [N m]", 2.941995, TorqueUnits.ToNm(30, TorqueUnit.KgfCm), 1e-9, Source);
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
        Validation.Equal(FormattableString.Invariant($"mechanics I2 wind {wind} m/s"), "gust pressure at 1.226 kg/m3 [Pa]", expected,
            WindForce.PressurePa(wind, Air.WindLoadDensityKgPerM3), 0.06, "q = 0.613 v2, recomputed");

    [Theory]
    [InlineData(20, 250.0)]
    [InlineData(25, 390.625)]
    public void Wind_pressure_of_the_code(double wind, double expected) =>
        Validation.Equal(FormattableString.Invariant($"mechanics I2b wind {wind} m/s"), "gust pressure at 1.25 kg/m3 [Pa]", expected, WindForce.PressurePa(wind), 1e-9, "EN 1991-1-4, basic velocity pressure");

    [Fact]
    public void Wind_on_a_panel()
    {
        const string Source = "worked example, recomputed; force coefficient and eccentricity common practice";
        var force = WindForce.ForceN(WindForce.PressurePa(25, Air.WindLoadDensityKgPerM3), 2, 1.5);
        Validation.Equal("mechanics I3 force", "wind on 2 m2 at 25 m/s [N]", 1149.4, force, 0.06, Source);
        Validation.Equal("mechanics I3 moment", "moment with 0.1 m eccentricity [N m]", 114.9, WindForce.MomentNm(force, 0.1), 0.06, Source);
        Validation.Equal("mechanics I3 hinge", "moment about an edge of a 1 m chord [N m]", 574.7, WindForce.MomentNm(force, 0.5), 0.06, Source);
    }

    [Fact]
    public void Imbalance_of_a_weight() =>
        Validation.Equal("mechanics I4 imbalance", "40 kg, 0.15 m off, at 45 deg [N m]", 41.61, ShaftMoments.ImbalanceNm(40, 0.15, 45), 0.005, "statics, recomputed");

    [Theory]
    [InlineData("ball", 0.0013, 0.050, 0.065)]
    [InlineData("plain", 0.1, 0.050, 5.0)]
    public void Bearing_friction(string bearing, double coefficient, double diameter, double expected) =>
        Validation.Equal("mechanics I5 bearing " + bearing, "friction moment at 2000 N [N m]", expected, ShaftMoments.BearingFrictionNm(coefficient, 2000, diameter), 1e-9, "M = mu P d/2; coefficients of the JTEKT-Koyo and RoyMech tables");

    [Theory]
    [InlineData(3, 0.08, 0.379, 0.394)]
    [InlineData(5, 0.05, 0.619, 0.634)]
    [InlineData(5, 0.10, 0.447, 0.463)]
    [InlineData(10, 0.05, 0.761, 0.772)]
    [InlineData(20, 0.03, 0.909, 0.914)]
    public void Worm_efficiency(double lead, double friction, double full, double simple)
    {
        var id = FormattableString.Invariant($"mechanics I6 worm {lead} deg {friction}");
        Validation.Equal(id, "efficiency at 20 deg pressure angle [1]", full, WormGear.Efficiency(lead, friction), 0.0006, "published worm gear formula, recomputed");
        Validation.Equal(id + " simple", "efficiency of a square thread [1]", simple, WormGear.SimpleEfficiency(lead, friction), 0.0006, "published worm gear formula, recomputed");
    }

    [Fact]
    public void Worm_holds_at_rest_below_the_friction_angle()
    {
        Assert.True(WormGear.HoldsAtRest(3, 0.08));
        Assert.False(WormGear.HoldsAtRest(5, 0.08));
        Assert.True(WormGear.Efficiency(3, 0.08) < WormGear.LocksBelow);
        Assert.True(WormGear.Efficiency(10, 0.05) > WormGear.SlipsAbove);
        Assert.Throws<ArgumentOutOfRangeException>(() => WormGear.Efficiency(0, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => WormGear.SimpleEfficiency(45, 0.1));
    }
}
