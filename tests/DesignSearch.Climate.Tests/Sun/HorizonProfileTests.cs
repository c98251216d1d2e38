using DesignSearch.Climate.Sun;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Obstacles around: straight lines between the directions that were measured, all the way round through north.</summary>
public sealed class HorizonProfileTests
{
    private static readonly HorizonProfile Hills = new([(300, 20), (100, 10), (200, 30)]);

    [Theory]
    [InlineData(100, 10)]
    [InlineData(150, 20)]
    [InlineData(200, 30)]
    [InlineData(210, 29)]
    [InlineData(250.5, 24.95)]
    [InlineData(300, 20)]
    [InlineData(330, 18.125)]
    [InlineData(0, 16.25)]
    [InlineData(360, 16.25)]
    [InlineData(-160, 30)]
    [InlineData(359.5, 16.28125)]
    [InlineData(60, 12.5)]
    public void Between_two_directions_it_runs_straight(double azimuth, double expected) => Assert.Equal(expected, Hills.AltitudeAt(azimuth), 1e-9);

    [Fact]
    public void One_direction_is_all_of_them_and_none_is_refused()
    {
        var wall = new HorizonProfile([(-90, 25)]);
        Assert.All((double[])[0, 89.9, 180, 270, 271], a => Assert.Equal(25, wall.AltitudeAt(a), 1e-9));
        Assert.Throws<ArgumentException>(() => new HorizonProfile([]));
    }

    [Fact]
    public void No_obstacle_stands_higher_than_the_zenith_or_below_the_level()
    {
        var odd = new HorizonProfile([(0, -5), (90, -5), (180, 95), (270, 95)]);
        Assert.Equal((0, 0, 90, 90), (odd.AltitudeAt(0), odd.AltitudeAt(45), odd.AltitudeAt(180), odd.AltitudeAt(200)));
    }

    // The level sees of an even sky above a ring of hills of height h the share cos² h: a cap of the sky, each part by its cosine.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(30, 0.75)]
    [InlineData(45, 0.5)]
    [InlineData(90, 0)]
    public void A_ring_of_hills_takes_its_share_of_an_even_sky(double altitude, double share) => Assert.Equal(share, new HorizonProfile([(0, altitude)]).SkyShare, 1e-12);

    [Fact]
    public void Half_a_ring_takes_half_of_it() => Assert.Equal(0.875, new HorizonProfile([(0, 30), (179, 30), (180, 0), (359, 0)]).SkyShare, 1e-12);
}
