using DesignSearch.Physics;

namespace DesignSearch.Climate.Sun;

/// <summary>The sun as seen from the centre of the earth at one instant, in the frame that turns with the earth.</summary>
/// <param name="DeclinationRad">Apparent declination [rad].</param>
/// <param name="GreenwichHourAngleRad">Hour angle at longitude 0, west positive [rad], 0 to 2π.</param>
/// <param name="DistanceAu">Distance [au].</param>
public readonly record struct Ephemeris(double DeclinationRad, double GreenwichHourAngleRad, double DistanceAu)
{
    private const double Rad = Math.PI / 180;

    /// <summary>Irradiance normal to the sun above the atmosphere [W/m²]: 1361 at one astronomical unit.</summary>
    public double ExtraterrestrialNormalWPerM2 => Radiation.SolarConstantWPerM2 / (DistanceAu * DistanceAu);

    /// <summary>True solar time less mean solar time [minutes], −20 to 20.</summary>
    /// <param name="utc">The instant the ephemeris was made for.</param>
    public double EquationOfTimeMin(DateTime utc)
    {
        var meanHourAngle = (utc.TimeOfDay.TotalHours - 12) * 15 * Rad;
        return Math.IEEERemainder(GreenwichHourAngleRad - meanHourAngle, 2 * Math.PI) / Rad * 4;
    }

    /// <summary>Computes the apparent geocentric sun. Error under 0.002° from 1900 to 2100.</summary>
    /// <remarks>J. Meeus, Astronomical Algorithms (1991), chapters 12, 21 and 25.</remarks>
    /// <param name="utc">Universal time; its kind is not looked at.</param>
    public static Ephemeris At(DateTime utc)
    {
        var days = (utc - new DateTime(2000, 1, 1, 12, 0, 0, DateTimeKind.Unspecified)).TotalDays;
        var dynamicalCenturies = (days + DeltaTSeconds(utc.Year + (utc.DayOfYear - 0.5) / 365.25) / 86400) / 36525;
        var millennia = dynamicalCenturies / 10;

        var longitude = EarthOrbit.LongitudeRad(millennia) + Math.PI - 0.09033 / 3600 * Rad;
        var latitude = -EarthOrbit.LatitudeRad(millennia);
        var distance = EarthOrbit.DistanceAu(millennia);

        var node = (125.04452 - 1934.136261 * dynamicalCenturies) * Rad;
        var meanSun = (280.4665 + 36000.7698 * dynamicalCenturies) * Rad;
        var meanMoon = (218.3165 + 481267.8813 * dynamicalCenturies) * Rad;
        var nutationLongitude = (-17.20 * Math.Sin(node) - 1.32 * Math.Sin(2 * meanSun) - 0.23 * Math.Sin(2 * meanMoon) + 0.21 * Math.Sin(2 * node)) / 3600;
        var nutationObliquity = (9.20 * Math.Cos(node) + 0.57 * Math.Cos(2 * meanSun) + 0.10 * Math.Cos(2 * meanMoon) - 0.09 * Math.Cos(2 * node)) / 3600;
        var obliquity = (23.4392911 - 0.0130042 * dynamicalCenturies + nutationObliquity) * Rad;

        var apparent = longitude + (nutationLongitude - 20.4898 / 3600 / distance) * Rad;
        var rightAscension = Math.Atan2(Math.Sin(apparent) * Math.Cos(obliquity) - Math.Tan(latitude) * Math.Sin(obliquity), Math.Cos(apparent));
        var declination = Math.Asin(Math.Sin(latitude) * Math.Cos(obliquity) + Math.Cos(latitude) * Math.Sin(obliquity) * Math.Sin(apparent));

        var centuries = days / 36525;
        var siderealDeg = 280.46061837 + 360.98564736629 * days + 0.000387933 * centuries * centuries + nutationLongitude * Math.Cos(obliquity);
        var hourAngle = (siderealDeg * Rad - rightAscension) % (2 * Math.PI);
        return new(declination, hourAngle < 0 ? hourAngle + 2 * Math.PI : hourAngle, distance);
    }

    /// <summary>Dynamical time less universal time [s]; Espenak and Meeus (2006), polynomials for 1986 to 2150, their parabola outside.</summary>
    private static double DeltaTSeconds(double year)
    {
        var t = year - 2000;
        return year switch
        {
            >= 1986 and < 2005 => 63.86 + t * (0.3345 + t * (-0.060374 + t * (0.0017275 + t * (0.000651814 + t * 0.00002373599)))),
            >= 2005 and < 2050 => 62.92 + t * (0.32217 + t * 0.005589),
            >= 2050 and < 2150 => Parabola(year) - 0.5628 * (2150 - year),
            _ => Parabola(year),
        };
    }

    private static double Parabola(double year) => -20 + 32 * ((year - 1820) / 100) * ((year - 1820) / 100);
}
