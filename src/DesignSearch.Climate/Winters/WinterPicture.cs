using DesignSearch.Climate.Weather;

namespace DesignSearch.Climate.Winters;

/// <summary>What a picture of a winter shows: the band of temperature, the daily sun, the hours of frost.</summary>
/// <param name="Name">Of the winter or the file.</param>
/// <param name="Days">In turn; for a winter the counted days only.</param>
/// <param name="StressWeek">Numbers of the first day of a stress week and the day after it; nothing where there is none.</param>
public sealed record WinterPicture(string Name, IReadOnlyList<WinterDay> Days, (int First, int After)? StressWeek)
{
    /// <summary>The counted days of a winter.</summary>
    /// <param name="winter">The winter.</param>
    public static WinterPicture Of(Winter winter)
    {
        var days = DaysOf(winter.Start, winter.AirC, winter.GlobalWPerM2, winter.WarmUpHours);
        var week = winter.StressWeek is { } span ? ((span.First - winter.WarmUpHours) / 24, (span.First + span.Count - winter.WarmUpHours) / 24) : ((int, int)?)null;
        return new(winter.Name, days, week);
    }

    /// <summary>Every whole day of a record.</summary>
    /// <param name="record">The record.</param>
    public static WinterPicture Of(WeatherRecord record) => new(record.Place.Name, DaysOf(record.Start, record.AirC, record.GlobalWPerM2, (24 - record.Start.Hour) % 24), null);

    private static List<WinterDay> DaysOf(DateTime start, double[] air, double[] global, int from)
    {
        var days = new List<WinterDay>();
        for (var h = from; h + 24 <= air.Length; h += 24)
        {
            var day = air[h..(h + 24)];
            days.Add(new(DateOnly.FromDateTime(start.AddHours(h)), day.Min(), day.Average(), day.Max(), global[h..(h + 24)].Sum() / 1000, day.Count(t => t < 0)));
        }

        return days;
    }
}
