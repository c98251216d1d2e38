using DesignSearch.Climate.Sun;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Dawn by the clock, against where the sun then stands and the light that it then gives.</summary>
public sealed class DawnTests
{
    [Theory]
    [InlineData(46.3, 13.9, 1.0, 11)]
    [InlineData(46.3, 13.9, 1.0, 3)]
    [InlineData(-38, 145, 10.0, 6)]
    [InlineData(60, -3, 0.0, 12)]
    public void The_sensor_switches_where_a_clear_sky_gives_its_light(double latitude, double longitude, double zone, int month)
    {
        var place = Places.At(latitude, longitude, zone);
        var dawn = Dawn.ClockHour(place, month)!.Value;
        var sun = Places.Sun(place, new DateTime(2026, month, 15, 0, 0, 0, DateTimeKind.Unspecified).AddHours(dawn - zone));
        Validation.Equal(FormattableString.Invariant($"sun dawn at {latitude} in month {month}"), "light on the level at dawn [W/m²]", 30, ClearSky.HaurwitzWPerM2(Math.Cos(sun.ZenithDeg * Math.PI / 180)), 2, "Haurwitz 1945 at the sun's place after Meeus; the sensor's 30 W/m² is common practice", "Dawn.ClockHour");
        Assert.True(sun.AzimuthDeg < 180);
    }

    // In the shortest month the sun at 66° north stays below.
    [Fact]
    public void No_dawn_where_the_sun_stays_low() => Assert.Null(Dawn.ClockHour(Places.At(66, 25), 12));
}
