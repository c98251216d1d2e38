using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Synthesis;
using DesignSearch.Climate.Winters;
using DesignSearch.Physics;

namespace DesignSearch.Climate.Weather;

/// <summary>Makes up what a file does not have: the sun, the wind, the dew point.</summary>
internal sealed class MissingFields(Place place, DateTime start, double[] air, ReadingOptions options, string provider, List<string> repairs)
{
    private const double UsualWindMPerS = 2;
    private const int HoursOfDay = 24;
    private const double LeastKnown = 0.5;
    private readonly int midnight = start.Hour;
    private SyntheticDays? days;
    private double[]? cloudDiffuse;

    /// <summary>Cover of the sky hour by hour [0…1], NaN where it is not known; none where the file has none.</summary>
    public double[]? Cloud { get; init; }

    /// <summary>Global irradiance made from the cover of the sky where it is known through a day, else from monthly sun and daily range of the air.</summary>
    public double[] Global()
    {
        if (Cloud is null)
            return FromRange();
        var made = Days();
        var cover = Enumerable.Repeat(double.NaN, made.Count * HoursOfDay).ToArray();
        Cloud.CopyTo(cover, midnight);
        var (global, diffuse) = CloudLight.Of(made.SinAltitude, cover);
        bool IsKnown(int day) => Enumerable.Range(HoursOfDay * day, HoursOfDay).All(h => made.SinAltitude[h] <= 0 || !double.IsNaN(cover[h]));
        var known = Enumerable.Range(0, made.Count).Select(IsKnown).ToArray();
        var share = known.Count(k => k) / (double)known.Length;
        if (share < LeastKnown)
        {
            repairs.Add(FormattableString.Invariant($"The cover of the sky is known on {100 * share:0} % of the days only; it was not used."));
            return FromRange();
        }

        repairs.Add(
            "The file has no sun (" + provider + "): it was made from the cover of the sky (Kasten and Czeplak 1980). At seven open stations that "
                + "brings 12 to 30 % less sun in the winter half than their own figures, and single days are a third off"
                + (options.Monthly is null ? "; monthly means of the sun in the scenario set it right." : ": it was scaled to the monthly means."));
        if (options.Monthly is { } monthly)
            CloudLight.ScaleToMonths(made, global, diffuse, monthly, known);
        if (share < 1)
        {
            repairs.Add(FormattableString.Invariant(
                $"On {known.Count(k => !k)} of {known.Length} days the cover is not known: there the sun comes from the daily range of the temperature."));
            var range = RangeLight();
            for (var h = 0; h < range.Length; h++)
                (global[h + midnight], diffuse[h + midnight]) = known[(h + midnight) / HoursOfDay]
                    ? (global[h + midnight], diffuse[h + midnight])
                    : (range[h], double.NaN);
        }

        cloudDiffuse = Cut(diffuse);
        return Cut(global);
    }

    /// <summary>Long-wave light of the sky under its cover; where that is not known, under the cloud that the clearness of the day tells.</summary>
    /// <param name="dew">Dew point of the hours [°C].</param>
    /// <param name="global">Global irradiance of the hours [W/m²].</param>
    /// <returns>Nothing where the cover is not known.</returns>
    public double[]? SkyLongWave(double[] dew, double[] global)
    {
        if (Cloud is null || Cloud.Count(c => !double.IsNaN(c)) < LeastKnown * Cloud.Length)
            return null;
        var clearness = WinterBuilder.DailyClearness(place, start, global);
        var pressure = Atmosphere.PressureHPa(place.ElevationM);
        var solarShift = place.LongitudeDeg / 15 - place.ZoneHours + start.TimeOfDay.TotalHours;
        repairs.Add("The sky's long-wave light was made from its cover by cloud.");
        return [.. Cloud.Select((c, h) => SkyTemperature.LongWave(SkyTemperature.UnderCloudC(
            air[h], dew[h], double.IsNaN(c) ? SkyTemperature.CoverAt(clearness, h + 0.5) : Math.Clamp(c, 0, 1), h + 0.5 + solarShift, pressure)))];
    }

    private double[] FromRange()
    {
        repairs.Add(options.Monthly is null
            ? "The file has no sun (" + provider + "): it was made up from the daily range of the temperature, right to about 15 % at best. Give monthly means to do better."
            : "The file has no sun (" + provider + "): it was made up from the monthly means and the daily range of the temperature.");
        return RangeLight();
    }

    private double[] RangeLight()
    {
        SunFromRange.Fill(Days(), FromMidnight(), options.Monthly, options.Seed);
        return Cut(CloudMaker.Flickering(Days(), options.Seed));
    }

    /// <summary>Diffuse part of made-up light.</summary>
    public double[] Diffuse(double[] global)
    {
        var above = Cut(Days().Above);
        double Split(int h) => above[h] > 0 ? global[h] * BeamSplit.WinterHourly(global[h] / above[h]) : 0;
        return [.. Enumerable.Range(0, global.Length).Select(h => cloudDiffuse?[h] is { } own && !double.IsNaN(own) ? own : Split(h))];
    }

    /// <summary>Dew point: the lowest temperature of the day.</summary>
    public double[] DewPoint()
    {
        repairs.Add("The file has no humidity: the dew point was put at the day's lowest temperature.");
        var lowest = FromMidnight().Chunk(24).Select(day => day.Min()).ToArray();
        return [.. air.Select((a, h) => Math.Min(a, lowest[(h + midnight) / 24]))];
    }

    /// <summary>Wind from the monthly means, else a light breeze throughout.</summary>
    public double[] Wind()
    {
        if (options.Monthly is { } monthly)
        {
            repairs.Add("The file has no wind: it was made up from the monthly means.");
            return Cut(WindMaker.Make(Days(), monthly, options.Seed));
        }

        repairs.Add(FormattableString.Invariant($"The file has no wind: {UsualWindMPerS} m/s was taken throughout."));
        return [.. air.Select(_ => UsualWindMPerS)];
    }

    private SyntheticDays Days() => days ??= new SyntheticDays(place, start.AddHours(-midnight), (air.Length + midnight + 23) / 24);

    private double[] Cut(double[] wholeDays) => wholeDays[midnight..(midnight + air.Length)];

    // The hours since midnight that the record lacks repeat its first one.
    private double[] FromMidnight() => [.. Enumerable.Repeat(air[0], midnight), .. air];
}
