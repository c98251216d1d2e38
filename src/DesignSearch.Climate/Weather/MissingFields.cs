namespace DesignSearch.Climate;

/// <summary>Makes up what a file does not have: the sun, the wind, the dew point.</summary>
internal sealed class MissingFields(Place place, DateTime start, double[] air, ReadingOptions options, string provider, List<string> repairs)
{
    private const double UsualWindMPerS = 2;
    private SyntheticDays? days;

    /// <summary>Global irradiance made from the monthly sun and the daily range of the air.</summary>
    public double[] Global()
    {
        var made = Days();
        SunFromRange.Fill(made, air, options.Monthly, options.Seed);
        repairs.Add(options.Monthly is null
            ? "The file has no sun (" + provider + "): it was made up from the daily range of the temperature, right to about 15 % at best. Give monthly means to do better."
            : "The file has no sun (" + provider + "): it was made up from the monthly means and the daily range of the temperature.");
        return CloudMaker.Flickering(made, options.Seed)[..air.Length];
    }

    /// <summary>Diffuse part of made-up light.</summary>
    public double[] Diffuse(double[] global) => [.. global.Select((g, h) => Days().Above[h] > 0 ? g * BeamSplit.ErbsHourly(g / Days().Above[h]) : 0)];

    /// <summary>Dew point: the lowest temperature of the day.</summary>
    public double[] DewPoint()
    {
        repairs.Add("The file has no humidity: the dew point was put at the day's lowest temperature.");
        return [.. air.Select((a, h) => Math.Min(a, air.AsSpan(h / 24 * 24, Math.Min(24, air.Length - h / 24 * 24)).ToArray().Min()))];
    }

    /// <summary>Wind from the monthly means, else a light breeze throughout.</summary>
    public double[] Wind()
    {
        if (options.Monthly is { } monthly)
        {
            repairs.Add("The file has no wind: it was made up from the monthly means.");
            return WindMaker.Make(Days(), monthly, options.Seed)[..air.Length];
        }

        repairs.Add(FormattableString.Invariant($"The file has no wind: {UsualWindMPerS} m/s was taken throughout."));
        return [.. air.Select(_ => UsualWindMPerS)];
    }

    private SyntheticDays Days() => days ??= new SyntheticDays(place, start, (air.Length + 23) / 24);
}
