using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Whether the beam of a file may stand beside its global and diffuse light, hour by hour and as a whole.</summary>
public sealed class BeamClosureTests
{
    // At 60° a beam of 400 brings 200 on the level. Off by 20 W/m² or a tenth of the light at most, but where the sun stands low.
    [Theory]
    [InlineData(300, 100, 400, 60, true)]
    [InlineData(300, 129.9, 400, 60, true)]
    [InlineData(300, 130.1, 400, 60, false)]
    [InlineData(300, 69.9, 400, 60, false)]
    [InlineData(200.1, 0, 400, 60, true)]
    [InlineData(199.9, 0, 400, 60, false)]
    [InlineData(100, 80, 0, 60, true)]
    [InlineData(100, 79.9, 0, 60, false)]
    [InlineData(100, 0, 0, 80, false)]
    [InlineData(100, 0, 0, 80.1, true)]
    [InlineData(100, 100, 0, 95, true)]
    [InlineData(100, 100, -0.1, 60, false)]
    [InlineData(100, 100, double.NaN, 60, false)]
    public void An_hour_closes(double global, double diffuse, double beam, double zenith, bool holds) => Assert.Equal(holds, BeamClosure.HoldsIn(global, diffuse, beam, zenith));

    // What the split of global and diffuse would give is no beam of its own.
    [Fact]
    public void A_beam_is_its_own_where_it_is_not_that_of_the_split()
    {
        var winter = ClearWinter.At(44);
        var split = WinterBuilder.OwnBeam(winter with { BeamNormalWPerM2 = [.. Enumerable.Range(0, winter.Hours).Select(h => Sun.BeamSplit.Close(winter.GlobalWPerM2[h], winter.DiffuseWPerM2[h], winter.SunZenithDeg[h], winter.ExtraterrestrialNormalWPerM2[h]).BeamNormal)] });
        Assert.All(split, b => Assert.True(double.IsNaN(b)));
        var own = WinterBuilder.OwnBeam(winter with { BeamNormalWPerM2 = [.. Enumerable.Repeat(1234.5, winter.Hours)] });
        Assert.All(own, b => Assert.Equal(1234.5, b));
    }

    // A wave with its trough on the last days of December is coldest on day 365 or later, never on day 0.
    [Theory]
    [InlineData(364.6, 364.6)]
    [InlineData(0.5, 365.5)]
    [InlineData(1.5, 1.5)]
    [InlineData(183, 183)]
    public void The_coldest_day_of_the_ground_is_a_day_of_the_year(double trough, double coldest)
    {
        double[] middle = [15.5, 45, 74.5, 105, 135.5, 166, 196.5, 227.5, 258, 288.5, 319, 349.5];
        Assert.Equal(coldest, GroundFit.FromMonths([.. middle.Select(d => 9 - (7 * Math.Cos(2 * Math.PI * (d - trough) / 365)))]).ColdestDay, 0.9);
    }

    // By hand after Kusuda and Achenbach: at 1 m in soil of 6e-7 m²/s the wave is damped to exp(-0.408) and 23.7 days late.
    [Theory]
    [InlineData(0, 40, 2)]
    [InlineData(0, 222.5, 16)]
    [InlineData(1, 63.7, 4.344)]
    [InlineData(1, 246.2, 13.656)]
    public void The_ground_follows_the_year_later_and_less(double depth, double day, double expected) => Assert.Equal(expected, new GroundClimate(9, 7, 40).TemperatureC(depth, day, 6e-7), 0.02);
}
