using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Synthesis;

namespace DesignSearch.Climate.Weather;

/// <summary>Makes up what a file does not have: the sun, the wind, the dew point.</summary>
internal sealed class MissingFields(Place place, DateTime start, double[] air, ReadingOptions options, string provider, List<string> repairs)
{
    private const double UsualWindMPerS = 2;
    private readonly int midnight = start.Hour;
    private SyntheticDays? days;

    /// <summary>Global irradiance made from the monthly sun and the daily range of the air.</summary>
    public double[] Global()
    {
        var made = Days();
        SunFromRange.Fill(made, FromMidnight(), options.Monthly, options.Seed);
        repairs.Add(options.Monthly is null
            ? "The file has no sun (" + provider + "): it was made up from the daily range of the temperature, right to about 15 % at best. Give monthly means to do better."
            : "The file has no sun (" + provider + "): it was made up from the monthly means and the daily range of the temperature.");
        return Cut(CloudMaker.Flickering(made, options.Seed));
    }

    /// <summary>Diffuse part of made-up light.</summary>
    public double[] Diffuse(double[] global) => [.. global.Zip(Cut(Days().Above), (g, above) => above > 0 ? g * BeamSplit.ErbsHourly(g / above) : 0)];

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
