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
    [InlineData(30, 0.9845)]
    [InlineData(50, 0.9444)]
    [InlineData(60, 0.9)]
    public void Incidence_modifier_falls_with_the_angle(double angle, double expected) =>
        Validation.Equal($"collector B6 modifier {angle}", "1", expected, CollectorEfficiency.BeamModifier(0.1, Math.Cos(angle * Math.PI / 180)), 5e-5, "ISO 9806-1:1994 form with b0 0.1, recomputed");
}
