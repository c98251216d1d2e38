using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>The lines of the collector that the season runs, one layout wide.</summary>
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
    public void Gives_the_powers_of_a_certificate(double rise, double power)
    {
        var c = MadeLayout.Collector;
        var modifier = CollectorEfficiency.BeamModifier(Of(c.IncidenceB0), Of(1));
        var absorbed = CollectorEfficiency.AbsorbedW(Of(1), Of(c.Eta0Beam), modifier, Of(850), Of(c.DiffuseModifier), Of(150));
        var loss = CollectorEfficiency.LossWPerK(Of(c.A1WPerM2K), Of(c.A2WPerM2K2), Of(rise), Of(0));
        Validation.Equal($"collector C1 power {rise} K", "W/m²", power, Pack.At(absorbed - loss * Of(rise), 0), 0.6, Certificate, "CollectorEfficiency.LossWPerK");
    }

    [Fact]
    public void Efficiency_under_a_blue_sky() => Validation.Equal(
        "collector C1 efficiency under a blue sky", "1", 0.72902,
        Pack.At(CollectorEfficiency.AbsorbedW(Of(1), Of(0.739), Of(1), Of(850), Of(0.91), Of(150)), 0) / 1000, 1e-5, Certificate, "CollectorEfficiency.AbsorbedW");

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
    public void Incidence_modifier_falls_with_the_angle(double b0, double angle, double expected) => Validation.Equal(
        FormattableString.Invariant($"collector B6 modifier {b0} at {angle}"), "1", expected, Modifier(b0, Math.Cos(angle * Math.PI / 180)), 5e-5,
        "ISO 9806-1:1994 form, recomputed; b0 0.05: pvlib-python, test_iam", "CollectorEfficiency.BeamModifier");

    [Theory]
    [InlineData(1, 1)]
    [InlineData(0.01, 0)]
    [InlineData(1e-9, 0)]
    [InlineData(0, 0)]
    [InlineData(-0.5, 0)]
    public void Incidence_modifier_ends_at_nothing_and_begins_at_one(double cosine, double expected) => Assert.Equal(expected, Modifier(0.1, cosine));

    [Fact]
    public void Wind_and_a_negative_rise_add_to_the_loss() =>
        Assert.Equal(3 + 0.02 * 5 + 1.5, Pack.At(CollectorEfficiency.LossWPerK(Of(3), Of(0.02), Of(-5), Of(1.5)), 0), 1e-12);

    private static double Modifier(double b0, double cosine) => Pack.At(CollectorEfficiency.BeamModifier(Of(b0), Of(cosine)), 0);

    private static Lane1 Of(double x) => Lane1.Of(x);
}
