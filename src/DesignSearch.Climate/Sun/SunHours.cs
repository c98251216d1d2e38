namespace DesignSearch.Climate.Sun;

/// <summary>The sun at the middle of every hour of a stretch of local standard time.</summary>
internal sealed class SunHours
{
    public SunHours(Place place, DateTime localStart, int hours)
    {
        (ZenithDeg, AzimuthDeg, NormalWPerM2) = (new double[hours], new double[hours], new double[hours]);
        var utc = localStart.AddHours(0.5 - place.ZoneHours);
        for (var h = 0; h < hours; h++)
        {
            var sun = Ephemeris.At(utc.AddHours(h));
            (ZenithDeg[h], AzimuthDeg[h]) = SunPosition.Seen(place, sun);
            NormalWPerM2[h] = sun.ExtraterrestrialNormalWPerM2;
        }
    }

    public double[] ZenithDeg { get; }

    public double[] AzimuthDeg { get; }

    /// <summary>Above the atmosphere, normal to the sun.</summary>
    public double[] NormalWPerM2 { get; }
}
