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
