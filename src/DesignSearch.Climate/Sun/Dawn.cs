namespace DesignSearch.Climate.Sun;

/// <summary>When the day begins and ends for a light sensor, under a clear sky and over a level horizon.</summary>
public static class Dawn
{
    // There a clear sky gives the level the 30 W/m² at which a sensor switches: ClearSky.HaurwitzWPerM2.
    private const double AltitudeDeg = 3.81;
    private const double Rad = Math.PI / 180;
    private const double Noon = 12;
    private const double MinutesPerHour = 60;
    private const double DegPerHour = 15;
    private const int TensPerHour = 6;
    private const int AnyYear = 2026;
    private const int MiddleDay = 15;

    /// <summary>Local standard time of dawn in the middle of a month [h]; null where the sun stays below or above.</summary>
    /// <param name="place">Latitude, longitude and zone are used.</param>
    /// <param name="month">1 to 12.</param>
    public static double? ClockHour(Place place, int month) => ClockHours(place, month)?.Dawn;

    /// <summary>What a timer is set to for a month: dawn and dusk in its middle, local standard time to ten minutes [h]; null where the sun stays below or above.</summary>
    /// <param name="place">Latitude, longitude and zone are used.</param>
    /// <param name="month">1 to 12.</param>
    public static (double Dawn, double Dusk)? TimerHours(Place place, int month) => ClockHours(place, month) is var (dawn, dusk)
        ? (Math.Round(dawn * TensPerHour) / TensPerHour, Math.Round(dusk * TensPerHour) / TensPerHour)
        : null;

    private static (double Dawn, double Dusk)? ClockHours(Place place, int month)
    {
        var utc = new DateTime(AnyYear, month, MiddleDay, (int)Noon, 0, 0, DateTimeKind.Utc);
        var sun = Ephemeris.At(utc);
        var (sinLat, cosLat) = Math.SinCos(place.LatitudeDeg * Rad);
        var (sinDec, cosDec) = Math.SinCos(sun.DeclinationRad);
        var cosHour = (Math.Sin(AltitudeDeg * Rad) - (sinLat * sinDec)) / (cosLat * cosDec);
        if (cosHour is < -1 or > 1)
            return null;
        var noon = Noon + place.ZoneHours - (place.LongitudeDeg / DegPerHour) - (sun.EquationOfTimeMin(utc) / MinutesPerHour);
        var half = Math.Acos(cosHour) / Rad / DegPerHour;
        return (noon - half, noon + half);
    }
}
