using CsCheck;
using DesignSearch.Parts.Hydraulics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

public sealed class HydraulicsTests
{
    [Theory]
    [InlineData(1e5, 1e-4, 0.0185138661)]
    [InlineData(1e4, 0, 0.030883)]
    [InlineData(5e3, 0, 0.037393)]
    [InlineData(2e4, 1e-3, 0.027946)]
    [InlineData(8e3, 5e-4, 0.033475)]
    [InlineData(1500, 0, 0.0426667)]
    public void Friction_factor(double reynolds, double roughness, double expected) =>
        Validation.Equal(FormattableString.Invariant($"pipe D2 factor {reynolds} {roughness}"), "Darcy factor [1]", expected, PipeFriction.Factor(reynolds, roughness), 1e-6, "Colebrook's equation; fluids 1.3.1 documentation and recomputed", "PipeFriction.Factor");

    [Theory]
    [InlineData(1e5, 1e-4, 0.0182650530, 0.0184626246)]
    [InlineData(1e4, 0, 0.030886, 0.031002)]
    [InlineData(5e3, 0, 0.037730, 0.037887)]
    [InlineData(2e4, 1e-3, 0.027626, 0.028134)]
    [InlineData(8e3, 5e-4, 0.033410, 0.033778)]
    public void Explicit_formulas(double reynolds, double roughness, double haaland, double churchill)
    {
        var id = FormattableString.Invariant($"pipe D2 {reynolds} {roughness}");
        Validation.Equal(id + " Haaland", "Darcy factor [1]", haaland, PipeFriction.Haaland(reynolds, roughness), 1e-6, "Haaland's formula; fluids 1.3.1 and recomputed", "PipeFriction.Haaland");
        Assert.Equal(1, PipeFriction.Haaland(reynolds, roughness) / PipeFriction.Factor(reynolds, roughness), 0.02);
        var ours = PipeFriction.Factor(reynolds, roughness);
        Validation.Equal(id + " by Churchill", "Darcy factor [1]", churchill, ours, 0.02 * churchill, "Churchill's formula of 1977, within 2 %; fluids 1.3.1 and recomputed", "PipeFriction.Factor");
    }

    [Theory]
    [InlineData(1e5, 0.017792)]
    [InlineData(1e4, 0.031640)]
    [InlineData(5e3, 0.037627)]
    public void Smooth_pipe(double reynolds, double expected) => Validation.Equal(
        FormattableString.Invariant($"pipe D2 {reynolds} by Blasius"), "Darcy factor [1]", expected, PipeFriction.Factor(reynolds, 0), 0.03 * expected,
        "Blasius' formula for smooth pipe, within 3 %; fluids 1.3.1 and recomputed", "PipeFriction.Factor");

    [Theory]
    [InlineData(50, 0.020, 0.2, 30, 7, 0.6366, 23019, 7754)]
    [InlineData(40, 0.0204, 0.15, 25, 7, 0.4589, 14231, 3688)]
    [InlineData(60, 0.016, 0.03, 20, 1.5, 0.1492, 5037, 511.9)]
    public void Worked_examples(double celsius, double bore, double litresPerS, double length, double roughnessUm, double speed, double reynolds, double drop)
    {
        var id = FormattableString.Invariant($"pipe D2 example {celsius} C");
        var flow = litresPerS / 1000;
        Validation.Equal(id + " speed", "mean speed [m/s]", speed, PipeFriction.SpeedMPerS(flow, bore), 1e-4, "recomputed with IAPWS water", "PipeFriction.SpeedMPerS");
        Validation.Equal(id + " Reynolds", "Reynolds number [1]", reynolds, PipeFriction.Reynolds(flow, bore, celsius), 0.001 * reynolds, "recomputed with IAPWS water", "PipeFriction.Reynolds");
        Validation.Equal(id + " drop", "pressure drop [Pa]", drop, PipeFriction.DropPa(flow, bore, length, roughnessUm * 1e-6, celsius), 0.001 * drop, "Colebrook and Darcy, recomputed", "PipeFriction.DropPa");
    }

    [Fact]
    public void Crane_example_of_plastic_pipe()
    {
        const string Source = "Crane TP 410 example 7.1, as quoted by the fluids library";

        // The bore of 2 inch schedule 40 pipe, 52.5 mm, is from memory.
        var reynolds = PipeFriction.Reynolds(0.2 / 60, 0.0525, 30);
        Validation.Equal("pipe D2 Crane 7.1 Reynolds", "Reynolds number [1]", 100600, reynolds, 0.015 * 100600, Source, "PipeFriction.Reynolds");
        Validation.Equal("pipe D2 Crane 7.1 factor", "Darcy factor [1]", 0.0179, PipeFriction.Factor(reynolds, 0), 0.015 * 0.0179, Source, "PipeFriction.Factor");
    }

    // 25 °C is no row of the table in the code, so this checks the interpolation.
    [Fact]
    public void Water_between_the_rows_of_its_table()
    {
        Validation.Equal("pipe D3 density 25 C", "density of water [kg/m3]", 997.048, WaterProperties.DensityKgPerM3(25), 0.0005 * 997, "IAPWS IF97, recomputed with iapws 1.5.5", "WaterProperties.DensityKgPerM3");
        Validation.Equal("pipe D3 viscosity 25 C", "viscosity of water [Pa s]", 8.9002e-4, WaterProperties.ViscosityPaS(25), 0.01 * 8.9e-4, "IAPWS R12-08, recomputed with iapws 1.5.5", "WaterProperties.ViscosityPaS");
        Assert.Equal(999.845, WaterProperties.DensityKgPerM3(-5), 9);
        Assert.Equal(3.1418e-4, WaterProperties.ViscosityPaS(120), 9);
    }

    [Fact]
    public void Drop_grows_with_flow() =>
        Gen.Select(Gen.Double[1e-6, 1e-3], Gen.Double[1.01, 3]).Sample((flow, more) =>
            PipeFriction.DropPa(flow * more, 0.02, 10, 7e-6, 30) > PipeFriction.DropPa(flow, 0.02, 10, 7e-6, 30));

    [Fact]
    public void No_flow_costs_no_pressure() => Assert.Equal(0, PipeFriction.DropPa(0, 0.02, 10, 7e-6, 30));

    [Fact]
    public void Pump_and_loop_meet_where_their_heads_are_equal()
    {
        var curve = new PumpCurve(4, 1e-3);
        var flow = curve.FlowM3PerS(1, q => PipeFriction.DropPa(q, 0.02, 30, 7e-6, 40));
        Assert.Equal(curve.HeadM(flow), 1 + (PipeFriction.DropPa(flow, 0.02, 30, 7e-6, 40) / 9806.65), 6);
        Assert.Equal(0, curve.FlowM3PerS(4, _ => 0));
        Assert.Equal(1e-3, curve.FlowM3PerS(0, _ => 0), 9);
        Assert.Equal(3, curve.HeadM(0.5e-3), 12);
    }
}
