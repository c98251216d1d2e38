using DesignSearch.Season.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class CollectorEfficiencyTests
{
    private const string Certificate = "Solar Keymark data sheet DS 3663, CENER report 30.4062.0, 2022";

    [Theory]
    [InlineData(0, 729)]
    [InlineData(10, 692)]
    [InlineData(30, 608)]
    [InlineData(50, 511)]
    [InlineData(70, 400)]
    [InlineData(83, 321)]
    public void Gives_the_powers_of_a_certificate(double rise, double power) =>
        Validation.Equal($"collector C1 power {rise} K", "W/m²", power, CollectorEfficiency.PowerWPerM2(MadeLayout.Collector, 850, 150, 1, rise), 0.6, Certificate);

    [Fact]
    public void Stagnates_where_the_formula_says() =>
        Validation.Equal("collector C1 stagnation formula", "°C", 158.15, Stagnation.TemperatureC(MadeLayout.Collector), 0.02, "root of the efficiency curve of " + Certificate);

    [Theory]
    [InlineData(0.05, 22.5, 0.99588039)]
    [InlineData(0.05, 45, 0.97928932)]
    [InlineData(0.05, 67.5, 0.9193437)]
    [InlineData(0.1, 30, 0.9845)]
    [InlineData(0.1, 50, 0.9444)]
    [InlineData(0.1, 60, 0.9)]
    [InlineData(0.17, 30, 0.9737)]
    [InlineData(0.17, 50, 0.9055)]
    [InlineData(0.17, 60, 0.83)]
    public void Incidence_modifier_falls_with_the_angle(double b0, double angle, double expected) =>
        Validation.Equal(FormattableString.Invariant($"collector B6 modifier {b0} at {angle}"), "1", expected, CollectorEfficiency.BeamModifier(b0, Math.Cos(angle * Math.PI / 180)), 5e-5, "ISO 9806-1:1994 form, recomputed; b0 0.05: pvlib-python, test_iam");
}
