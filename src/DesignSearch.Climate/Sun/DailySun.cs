using DesignSearch.Physics;

namespace DesignSearch.Climate.Sun;

/// <summary>Day-by-day sun by the usual series: good for daily totals, half a degree off for instants.</summary>
public static class DailySun
{
    private const double Rad = Math.PI / 180;

    /// <summary>Declination after P. I. Cooper, Solar Energy 12 (1969) [rad].</summary>
    /// <param name="dayOfYear">1 to 366.</param>
    public static double DeclinationRad(double dayOfYear) => 23.45 * Rad * Math.Sin(2 * Math.PI * (284 + dayOfYear) / 365);

    /// <summary>Hour angle of sunset on the level [rad], 0 in polar night, π in polar day.</summary>
    /// <param name="latitudeDeg">North positive [°].</param>
    /// <param name="declinationRad">[rad].</param>
    public static double SunsetHourAngleRad(double latitudeDeg, double declinationRad) =>
        Math.Acos(Math.Clamp(-Math.Tan(latitudeDeg * Rad) * Math.Tan(declinationRad), -1, 1));

    /// <summary>Irradiation of a level surface above the atmosphere over one day [J/m²]; Duffie and Beckman, chapter 1.</summary>
    /// <param name="latitudeDeg">North positive [°], −66 to 66.</param>
    /// <param name="dayOfYear">1 to 366.</param>
    /// <param name="solarConstantWPerM2">[W/m²].</param>
    public static double ExtraterrestrialJPerM2(double latitudeDeg, double dayOfYear,
        double solarConstantWPerM2 = Radiation.SolarConstantWPerM2)
    {
        var declination = DeclinationRad(dayOfYear);
        var sunset = SunsetHourAngleRad(latitudeDeg, declination);
        var (sinLat, cosLat) = Math.SinCos(latitudeDeg * Rad);
        var (sinDec, cosDec) = Math.SinCos(declination);
        var nearer = 1 + 0.033 * Math.Cos(2 * Math.PI * dayOfYear / 365);
        return 86400 * solarConstantWPerM2 / Math.PI * nearer * (cosLat * cosDec * Math.Sin(sunset) + sunset * sinLat * sinDec);
    }
}
