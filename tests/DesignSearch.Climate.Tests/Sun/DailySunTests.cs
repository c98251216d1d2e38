using DesignSearch.Climate.Sun;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class DailySunTests
{
    [Theory]
    [InlineData(43, 105, 1367, 98.90, 33.77)]
    [InlineData(-44, 172, 1361, 65.24, 10.30)]
    [InlineData(-44, 222, 1361, 74.61, 15.65)]
    [InlineData(45, 17, 1361, 67.53, 12.08)]
    [InlineData(51.5, 355, 1361, 56.95, 6.54)]
    [InlineData(-36.85, 196, 1361, 72.81, 15.64)]
    public void Sums_the_day_above_the_atmosphere(double latitude, int day, double constant, double sunsetDeg, double megajoules)
    {
        const string source = "formula of Duffie and Beckman, ch. 1, with Cooper's declination (1969), recomputed independently";
        var sunset = DailySun.SunsetHourAngleRad(latitude, DailySun.DeclinationRad(day)) * 180 / Math.PI;
        Validation.Equal($"sun A5 {latitude:0.##} day {day} sunset", "sunset hour angle [°]", sunsetDeg, sunset, 0.02, source, "DailySun.ExtraterrestrialJPerM2");
        Validation.Equal($"sun A5 {latitude:0.##} day {day} total", "irradiation above the atmosphere [MJ/m²]", megajoules, DailySun.ExtraterrestrialJPerM2(latitude, day, constant) / 1e6, 0.01, source, "DailySun.ExtraterrestrialJPerM2");
    }

    [Fact]
    public void Track_of_the_sun_agrees_with_the_full_position()
    {
        var place = Places.At(-44, 170);
        var from = Places.Utc("2001-05-01T00:00");
        var track = new SunTrack(place, from, from.AddDays(60));
        for (var h = 0; h < 60 * 24; h += 7)
        {
            var exact = Math.Cos(Places.Sun(place, from.AddHours(h)).ZenithDeg * Math.PI / 180);
            Assert.Equal(exact, track.CosZenith(from.AddHours(h)), 3e-4);
        }
    }

    [Theory]
    [InlineData(0, 0.9997)]
    [InlineData(30, 1.1540)]
    [InlineData(60, 1.9943)]
    [InlineData(68, 2.6542)]
    [InlineData(70, 2.9031)]
    [InlineData(80, 5.5860)]
    [InlineData(85, 10.3058)]
    public void Air_mass_follows_Kasten_and_Young(double zenith, double expected) =>
        Validation.Equal($"sun B4 air mass {zenith}", "relative air mass", expected, AirMass.KastenYoung(zenith), 1e-4, "Kasten and Young, Applied Optics 28 (1989), recomputed with pvlib", "AirMass.KastenYoung");
}
