using DesignSearch.Climate.Sun;

namespace DesignSearch.Climate.Synthesis;

/// <summary>Whole months of days with their sun, as the synthesis fills them.</summary>
internal sealed class SyntheticDays
{
    public SyntheticDays(Place place, DateTime first, int count)
    {
        (First, Count) = (first, count);
        (High, Low, Clearness, LowResidual) = (new double[count], new double[count], new double[count], new double[count]);
        (MeanC, LowC) = (new double[count], new double[count]);
        (Sunrise, Sunset, AboveWhPerM2) = (new double[count], new double[count], new double[count]);
        Above = new double[count * 24];
        Unrest = new double[count * 24];
        SinAltitude = new double[count * 24];
        var sun = new SunTrack(place, first.AddHours(-place.ZoneHours), first.AddDays(count).AddHours(-place.ZoneHours));
        for (var h = 0; h < count * 24; h++)
        {
            var utc = first.AddHours(h - place.ZoneHours);
            Above[h] = sun.MeanHorizontal(utc, 60);
            SinAltitude[h] = sun.CosZenith(utc.AddMinutes(30));
            AboveWhPerM2[h / 24] += Above[h];
        }

        for (var d = 0; d < count; d++)
        {
            var noon = first.AddDays(d).AddHours(12);
            var ephemeris = Ephemeris.At(noon.AddHours(-place.ZoneHours));
            var half = DailySun.SunsetHourAngleRad(place.LatitudeDeg, ephemeris.DeclinationRad) * 12 / Math.PI;
            var middle = 12 - (place.LongitudeDeg / 15 - place.ZoneHours) - ephemeris.EquationOfTimeMin(noon.AddHours(-place.ZoneHours)) / 60;
            (Sunrise[d], Sunset[d]) = (middle - Math.Clamp(half, 1, 11), middle + Math.Clamp(half, 1, 11));
        }
    }

    public DateTime First { get; }

    public int Count { get; }

    /// <summary>Mean of the day and its lowest hour mean, as they are wanted [°C].</summary>
    public double[] MeanC { get; }

    public double[] LowC { get; }

    /// <summary>Extremes of the curve through the hours [°C].</summary>
    public double[] High { get; }

    public double[] Low { get; }

    /// <summary>Daily clearness.</summary>
    public double[] Clearness { get; }

    /// <summary>Standardised residual of the lowest temperature.</summary>
    public double[] LowResidual { get; }

    /// <summary>Local standard hours of the day.</summary>
    public double[] Sunrise { get; }

    public double[] Sunset { get; }

    /// <summary>Irradiation above the atmosphere of each day [Wh/m²].</summary>
    public double[] AboveWhPerM2 { get; }

    /// <summary>What fronts and gusts add to the smooth curve of each hour [K]; nothing until it is filled.</summary>
    public double[] Unrest { get; }

    /// <summary>Irradiance above the atmosphere, hour means [W/m²].</summary>
    public double[] Above { get; }

    /// <summary>Sine of the sun's altitude at mid-hour.</summary>
    public double[] SinAltitude { get; }

    /// <summary>Month of a day, 1 to 12.</summary>
    public int Month(int day) => First.AddDays(day).Month;

    /// <summary>The days of each month in turn.</summary>
    public IEnumerable<IGrouping<int, int>> Months() => Enumerable.Range(0, Count).GroupBy(d => First.AddDays(d).Year * 12 + First.AddDays(d).Month);
}
