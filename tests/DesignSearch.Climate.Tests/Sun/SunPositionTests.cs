using DesignSearch.Climate.Sun;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class SunPositionTests
{
    private const string Ephem = "ephem 4.1.4, cross-checked with the SPA of pvlib (NREL/TP-560-34302)";
    private const string Spa = "Reda and Andreas, NREL/TP-560-34302 (2008), worked example A.5";

    [Theory]
    [InlineData("S1", -44.00, 170.00, "2025-06-21T21:30", 9.522, 43.726)]
    [InlineData("S2", -44.00, 170.00, "2025-06-22T00:00", 21.879, 10.372)]
    [InlineData("S3", -44.00, 170.00, "2025-06-22T03:00", 15.522, 327.358)]
    [InlineData("S5", -44.00, 170.00, "2025-08-10T02:30", 25.871, 331.840)]
    [InlineData("S6", -44.00, 170.00, "2025-12-22T00:40", 69.434, 358.986)]
    [InlineData("S7", -36.85, 174.76, "2025-07-01T00:30", 30.034, 358.624)]
    [InlineData("S8", -33.45, -70.66, "2025-06-21T13:00", 11.969, 51.142)]
    [InlineData("N1", 51.50, -0.12, "2025-12-21T10:00", 10.662, 152.488)]
    [InlineData("N2", 51.50, -0.12, "2025-12-21T12:00", 15.059, 180.317)]
    [InlineData("N4", 40.00, -105.00, "2025-02-10T17:00", 27.548, 142.807)]
    [InlineData("N5", 60.17, 24.94, "2025-03-20T10:00", 29.606, 172.050)]
    [InlineData("N6", 35.68, 139.69, "2025-11-05T00:30", 31.877, 147.005)]
    public void Stands_where_the_almanac_says(string id, double latitude, double longitude, string utc, double altitude, double azimuth)
    {
        var sun = Places.Sun(Places.At(latitude, longitude), Places.Utc(utc));
        Validation.Equal($"sun A2 {id} altitude", "altitude, no refraction [°]", altitude, 90 - sun.ZenithDeg, 0.003, Ephem, "SunPosition.Seen");
        Validation.Equal($"sun A2 {id} azimuth", "azimuth [°]", azimuth, sun.AzimuthDeg, 0.006, Ephem, "SunPosition.Seen");
        Validation.Equal($"sun A2 {id} direction", "angle between directions [°]", 0, Places.AngleDeg(sun, new(90 - altitude, azimuth)), 0.003, Ephem, "SunPosition.Seen");
    }

    [Fact]
    public void Follows_the_worked_example()
    {
        var utc = Places.Utc("2003-10-17T19:30:30");
        var sun = Ephemeris.At(utc);
        Validation.Equal("sun A1 declination", "geocentric declination [°]", -9.31434, sun.DeclinationRad * 180 / Math.PI, 2e-4, Spa, "Ephemeris.At");
        Validation.Equal("sun A1 distance", "distance [au]", 0.9965422974, sun.DistanceAu, 3e-6, Spa, "Ephemeris.At");
        Validation.Equal("sun A1 hour angle", "local hour angle [°]", 11.105902, (sun.GreenwichHourAngleRad * 180 / Math.PI - 105.1786 + 360) % 360, 1e-3, Spa, "Ephemeris.At");
        Validation.Equal("sun A1 equation of time", "equation of time [min]", 14.6415, sun.EquationOfTimeMin(utc), 0.01, Spa, "Ephemeris.EquationOfTimeMin");
        var seen = Places.Sun(Places.At(39.742476, -105.1786), utc);
        Validation.Equal("sun A1 altitude", "topocentric altitude, no refraction [°]", 39.872046, 90 - seen.ZenithDeg, 1e-3, Spa, "SunPosition.Seen");
        Validation.Equal("sun A1 azimuth", "azimuth [°]", 194.340241, seen.AzimuthDeg, 1e-3, Spa, "SunPosition.Seen");
        var incidence = Math.Acos(Falling.CosIncidence(30, 170, seen)) * 180 / Math.PI;
        Validation.Equal("sun A1 incidence", "incidence on a plane 30° facing 170° [°], the source with refraction", 25.187, incidence, 0.02, Spa, "PlaneFrame.Normal");
    }

    [Theory]
    [InlineData("2025-01-15", -9.48, -21.024, 1406.7)]
    [InlineData("2025-02-15", -14.06, -12.494, 1395.0)]
    [InlineData("2025-04-15", 0.05, 9.957, 1352.2)]
    [InlineData("2025-05-14", 3.67, 18.758, 1332.6)]
    [InlineData("2025-06-21", -1.85, 23.439, 1318.0)]
    [InlineData("2025-07-26", -6.56, 19.311, 1319.6)]
    [InlineData("2025-09-01", 0.06, 8.078, 1336.6)]
    [InlineData("2025-11-03", 16.44, -15.228, 1383.3)]
    [InlineData("2025-12-21", 1.82, -23.439, 1406.3)]
    public void Keeps_the_calendar_of_the_sun(string date, double equationMin, double declinationDeg, double normal)
    {
        var noon = Places.Utc(date + "T12:00");
        var sun = Ephemeris.At(noon);
        Validation.Equal($"sun A4 {date} equation of time", "equation of time [min]", equationMin, sun.EquationOfTimeMin(noon), 0.01, "SPA (NREL/TP-560-34302)", "Ephemeris.EquationOfTimeMin");
        Validation.Equal($"sun A4 {date} declination", "declination [°]", declinationDeg, sun.DeclinationRad * 180 / Math.PI, 0.002, "ephem 4.1.4", "Ephemeris.At");
        Validation.Equal($"sun A4 {date} above the atmosphere", "normal irradiance [W/m²]", normal, sun.ExtraterrestrialNormalWPerM2, 0.2, "1361 W/m² over the squared distance of ephem 4.1.4", "Ephemeris.ExtraterrestrialNormalWPerM2");
    }

    [Theory]
    [InlineData(15, -21.27)]
    [InlineData(46, -13.29)]
    [InlineData(105, 9.41)]
    [InlineData(134, 18.55)]
    [InlineData(172, 23.45)]
    [InlineData(207, 19.38)]
    [InlineData(244, 7.72)]
    [InlineData(307, -15.96)]
    [InlineData(355, -23.45)]
    public void Daily_declination_follows_Cooper(int dayOfYear, double declinationDeg) =>
        Validation.Equal($"sun A4 Cooper day {dayOfYear}", "declination by the daily series [°]", declinationDeg, DailySun.DeclinationRad(dayOfYear) * 180 / Math.PI, 0.006, "P. I. Cooper, Solar Energy 12 (1969), recomputed", "DailySun.DeclinationRad");

    [Theory]
    [InlineData(5, 48.630)]
    [InlineData(10, 135.742)]
    [InlineData(15, 226.255)]
    [InlineData(20, 316.036)]
    [InlineData(22, 351.380)]
    [InlineData(30, 487.894)]
    [InlineData(50, 778.767)]
    [InlineData(90, 1035.092)]
    public void A_clear_sky_gives_the_light_of_Haurwitz(double altitude, double global) =>
        Validation.Equal($"sun B4 clear sky {altitude}", "global irradiance [W/m²]", global, ClearSky.HaurwitzWPerM2(Math.Sin(altitude * Math.PI / 180)), 0.01, "B. Haurwitz, Journal of Meteorology 2 (1945), figures of pvlib-python, tests/test_clearsky.py", "ClearSky.HaurwitzWPerM2");

    [Theory]
    [InlineData(-44.00, 170.00, "2025-06-21", 12, "08:15:11", "12:41:45", "17:08:18")]
    [InlineData(-44.00, 170.00, "2025-08-10", 12, "07:43:02", "12:45:25", "17:48:19")]
    [InlineData(-44.00, 170.00, "2025-12-21", 12, "04:53:13", "12:37:56", "20:22:41")]
    [InlineData(51.50, -0.12, "2025-12-21", 0, "08:03:48", "11:58:39", "15:53:30")]
    [InlineData(45.00, 10.00, "2025-01-15", 1, "07:54:35", "12:29:28", "17:04:42")]
    [InlineData(40.00, -105.00, "2025-02-10", -7, "06:58:27", "12:14:11", "17:30:25")]
    [InlineData(60.17, 24.94, "2025-03-20", 2, "06:21:32", "12:27:37", "18:35:05")]
    [InlineData(-35.00, 0.00, "1996-07-05", 0, "07:08:15", "12:04:36", "17:01:04")]
    public void Rises_and_sets_on_time(double latitude, double longitude, string date, double zone, string rise, string transit, string set)
    {
        var place = Places.At(latitude, longitude);
        var noon = Places.Utc($"{date}T{transit}").AddHours(-zone);
        var hourAngleDeg = Math.IEEERemainder(Ephemeris.At(noon).GreenwichHourAngleRad * 180 / Math.PI + longitude, 360);
        Validation.Equal($"sun A3 {latitude:0} {date} transit", "sun in the meridian, ours less expected [s]", 0, -hourAngleDeg * 240, 10, "ephem 4.1.4", "SunPosition.Seen");
        foreach (var (what, time) in new[] { ("rise", rise), ("set", set) })
        {
            var expected = Places.Utc($"{date}T{time}").AddHours(-zone);
            var ours = Crossing(place, expected, 90.8333);
            Validation.Equal($"sun A3 {latitude:0} {date} {what}", "sun" + what + ", ours less expected [s]", 0, (ours - expected).TotalSeconds, 10, "ephem 4.1.4, centre of the disc at −0.8333°", "SunPosition.Seen");
        }
    }

    private static DateTime Crossing(Place place, DateTime near, double zenith)
    {
        var (low, high) = (near.AddMinutes(-20), near.AddMinutes(20));
        var rising = Places.Sun(place, low).ZenithDeg > zenith;
        for (var i = 0; i < 40; i++)
        {
            var middle = low + (high - low) / 2;
            if (Places.Sun(place, middle).ZenithDeg > zenith == rising)
                low = middle;
            else
                high = middle;
        }

        return low;
    }
}
