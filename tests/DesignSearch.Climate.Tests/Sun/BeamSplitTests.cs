using CsCheck;
using DesignSearch.Climate.Sun;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class BeamSplitTests
{
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.1, 0.9910)]
    [InlineData(0.2, 0.9820)]
    [InlineData(0.22, 0.9802)]
    [InlineData(0.3, 0.9486)]
    [InlineData(0.4, 0.8400)]
    [InlineData(0.5, 0.6591)]
    [InlineData(0.6, 0.4395)]
    [InlineData(0.7, 0.2440)]
    [InlineData(0.8, 0.1653)]
    [InlineData(0.9, 0.1650)]
    public void Diffuse_share_follows_Erbs(double clearness, double share) =>
        Validation.Equal(FormattableString.Invariant($"light B3 diffuse share {clearness}"), "diffuse share of the hour", share, BeamSplit.ErbsHourly(clearness), 1e-4, "Erbs, Klein and Duffie, Solar Energy 28 (1982), figures of pvlib", "BeamSplit.ErbsHourly");

    [Theory]
    [InlineData(0.405724, 50, 41.5704)]
    [InlineData(0.718133, 1000, 217.860)]
    [InlineData(0.768214, 1000, 170.790)]
    [InlineData(0.442456, 200, 154.155)]
    [InlineData(0.768919, 1000, 170.439)]
    [InlineData(0.169853, 120, 118.166)]
    public void Diffuse_light_follows_the_library(double clearness, double global, double diffuse) =>
        Validation.Equal(FormattableString.Invariant($"light B3 diffuse at {clearness}"), "diffuse light [W/m²]", diffuse, global * BeamSplit.ErbsHourly(clearness), 0.01, "pvlib-python, erbs", "BeamSplit.ErbsHourly");

    // Shares of diffuse light by the hour's clearness, pooled by file, as the median of ten open winters (November to March) has them.
    [Theory]
    [InlineData(0.25, 0.96, 0.02)]
    [InlineData(0.35, 0.89, 0.02)]
    [InlineData(0.45, 0.66, 0.02)]
    [InlineData(0.55, 0.455, 0.02)]
    [InlineData(0.65, 0.275, 0.01)]
    [InlineData(0.75, 0.165, 0.01)]
    public void Diffuse_share_in_winter_is_that_of_open_files(double clearness, double share, double tolerance) =>
        Validation.Equal(FormattableString.Invariant($"light diffuse share in winter {clearness}"), "diffuse share of the hour, over a class 0.1 wide", share, Pooled(clearness), tolerance,
            "diffuse columns of seven TMY3 typical years, two of PVGIS and a satellite year of NSRDB, medians", "BeamSplit.WinterHourly");

    [Theory]
    [InlineData(0, 1.0)]
    [InlineData(0.22, 0.9776)]
    [InlineData(0.35, 0.8862)]
    [InlineData(0.4, 0.7854)]
    [InlineData(0.6, 0.3692)]
    [InlineData(0.8, 0.1388)]
    [InlineData(1.1, 0.1386)]
    public void Diffuse_share_in_winter_runs_straight_between_its_knots(double clearness, double share) =>
        Assert.Equal(share, BeamSplit.WinterHourly(clearness), 5e-4);

    // Mean over the class, each hour weighed by its light.
    private static double Pooled(double middle)
    {
        var hours = Enumerable.Range(0, 101).Select(i => middle - 0.05 + 0.001 * i).ToList();
        return hours.Sum(k => k * BeamSplit.WinterHourly(k)) / hours.Sum();
    }

    [Fact]
    public void Beam_diffuse_and_global_always_close() =>
        Gen.Select(Gen.Double[0, 1200], Gen.Double[0, 1200], Gen.Double[0, 100]).Sample((global, diffuse, zenith) =>
        {
            var (beam, rest) = BeamSplit.Close(global, diffuse, zenith, 1400);
            Assert.InRange(beam, 0, 1400 * 0.80 + 1e-9);
            Assert.True(rest >= -1e-9);
            Assert.Equal(global, rest + beam * Math.Max(0, Math.Cos(zenith * Math.PI / 180)), 1e-9);
        });

    [Fact]
    public void Sunrise_spikes_are_cut()
    {
        var (beam, diffuse) = BeamSplit.Close(100, 0, 86, 1400);
        Assert.True(beam < 1400 * 0.5, FormattableString.Invariant($"{beam}"));
        Assert.True(diffuse > 50);
        Assert.Equal((0, 30), BeamSplit.Close(30, 0, 88, 1400));
    }
}
