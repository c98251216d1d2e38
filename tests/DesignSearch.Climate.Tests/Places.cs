using System.Globalization;
using DesignSearch.Climate.Sun;

namespace DesignSearch.Climate.Tests;

/// <summary>Places, instants and angles the tests share.</summary>
internal static class Places
{
    public static Place At(double latitude, double longitude, double? zone = null) => new("test", latitude, longitude, 0, zone ?? Math.Round(longitude / 15));

    public static DateTime Utc(string text) => DateTime.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.None);

    /// <summary>Where the sun is seen.</summary>
    public static SunAngles Sun(Place place, DateTime utc) => SunPosition.Seen(place, Ephemeris.At(utc));

    /// <summary>Angle between two directions [°], exact for small angles.</summary>
    public static double AngleDeg(SunAngles a, SunAngles b)
    {
        var (x, y) = (Unit(a), Unit(b));
        var chord = Math.Sqrt((x.E - y.E) * (x.E - y.E) + (x.N - y.N) * (x.N - y.N) + (x.U - y.U) * (x.U - y.U));
        return 2 * Math.Asin(chord / 2) * 180 / Math.PI;
    }

    private static (double E, double N, double U) Unit(SunAngles sun)
    {
        var (sinZ, cosZ) = Math.SinCos(sun.ZenithDeg * Math.PI / 180);
        var (sinA, cosA) = Math.SinCos(sun.AzimuthDeg * Math.PI / 180);
        return (sinZ * sinA, sinZ * cosA, cosZ);
    }
}
