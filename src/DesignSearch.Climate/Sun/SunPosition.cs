namespace DesignSearch.Climate.Sun;

/// <summary>The sun's place in the sky for an observer on the ground.</summary>
public static class SunPosition
{
    private const double Rad = Math.PI / 180;

    /// <summary>Topocentric position without refraction, the small parallax taken off the altitude.</summary>
    /// <remarks>Error under 0.01° (angle between directions) for 1950 to 2100.</remarks>
    /// <param name="place">Only latitude and longitude are used.</param>
    /// <param name="sun">The sun at the instant.</param>
    public static SunAngles Seen(Place place, in Ephemeris sun)
    {
        var hourAngle = sun.GreenwichHourAngleRad + place.LongitudeDeg * Rad;
        var (sinLat, cosLat) = Math.SinCos(place.LatitudeDeg * Rad);
        var (sinDec, cosDec) = Math.SinCos(sun.DeclinationRad);
        var (sinHour, cosHour) = Math.SinCos(hourAngle);
        var up = sinLat * sinDec + cosLat * cosDec * cosHour;
        var east = -cosDec * sinHour;
        var north = cosLat * sinDec - sinLat * cosDec * cosHour;
        var level = Math.Sqrt(east * east + north * north);
        var parallax = 8.794 / 3600 * Rad / sun.DistanceAu * level;
        var zenith = Math.Atan2(level, up) + parallax;
        var azimuth = Math.Atan2(east, north) / Rad;
        return new(zenith / Rad, azimuth < 0 ? azimuth + 360 : azimuth);
    }
}
