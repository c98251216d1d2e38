namespace DesignSearch.Climate.Sun;

/// <summary>The sun over one place for a stretch of days, tabulated once a day so that many instants are cheap.</summary>
/// <remarks>Declination, equation of time and distance run straight between noons: error under 0.01°.</remarks>
internal sealed class SunTrack
{
    private readonly DateTime firstNoonUtc;
    private readonly double sinLat;
    private readonly double cosLat;
    private readonly double longitudeRad;
    private readonly double[] declination;
    private readonly double[] equationRad;
    private readonly double[] normal;

    /// <summary>Tabulates from a day before the first to a day after the last instant.</summary>
    public SunTrack(Place place, DateTime firstUtc, DateTime lastUtc)
    {
        firstNoonUtc = firstUtc.Date.AddDays(-1).AddHours(12);
        (sinLat, cosLat) = Math.SinCos(place.LatitudeDeg * Math.PI / 180);
        longitudeRad = place.LongitudeDeg * Math.PI / 180;
        var days = (int)(lastUtc.Date - firstUtc.Date).TotalDays + 4;
        (declination, equationRad, normal) = (new double[days], new double[days], new double[days]);
        for (var d = 0; d < days; d++)
        {
            var noon = firstNoonUtc.AddDays(d);
            var sun = Ephemeris.At(noon);
            declination[d] = sun.DeclinationRad;
            equationRad[d] = sun.EquationOfTimeMin(noon) * Math.PI / 720;
            normal[d] = sun.ExtraterrestrialNormalWPerM2;
        }
    }

    /// <summary>An instant as days since the table began.</summary>
    public double DaysAt(DateTime utc) => (utc - firstNoonUtc).Ticks / (double)TimeSpan.TicksPerDay;

    /// <summary>Sine of the sun's altitude.</summary>
    public double CosZenith(DateTime utc) => CosZenith(DaysAt(utc));

    /// <summary>Irradiance on the level above the atmosphere at an instant [W/m²], 0 when the sun is down.</summary>
    public double Horizontal(DateTime utc) => Horizontal(DaysAt(utc));

    /// <summary>The same for an instant in days.</summary>
    public double Horizontal(double days) => Math.Max(0, CosZenith(days)) * Normal(days);

    /// <summary>Mean of the irradiance on the level above the atmosphere over a stretch of time [W/m²].</summary>
    public double MeanHorizontal(DateTime startUtc, double minutes, int parts = 12)
    {
        var sum = 0.0;
        for (var i = 0; i < parts; i++)
            sum += Horizontal(startUtc.AddMinutes(minutes * (i + 0.5) / parts));
        return sum / parts;
    }

    private double CosZenith(double days)
    {
        var (d, part) = Find(days);
        var dec = declination[d] + part * (declination[d + 1] - declination[d]);
        var hourAngle = (days - Math.Floor(days)) * 2 * Math.PI + longitudeRad + equationRad[d] + part * (equationRad[d + 1] - equationRad[d]);
        var (sinDec, cosDec) = Math.SinCos(dec);
        return sinLat * sinDec + cosLat * cosDec * Math.Cos(hourAngle);
    }

    // Irradiance normal to the sun above the atmosphere.
    private double Normal(double days)
    {
        var (d, part) = Find(days);
        return normal[d] + part * (normal[d + 1] - normal[d]);
    }

    private (int Day, double Part) Find(double days)
    {
        var d = Math.Clamp((int)days, 0, declination.Length - 2);
        return (d, days - d);
    }
}
