using DesignSearch.Climate.Weather;

namespace DesignSearch.Reporting.Weather;

/// <summary>Takes the winter half-year out of a weather record, day by day.</summary>
public static class WeatherDaysMaker
{
    private const int Days = 212;

    /// <summary>October to April north of the equator, April to October south of it; a record of one year wraps, of several gives its first whole half-year.</summary>
    /// <param name="record">The record.</param>
    /// <param name="frostLimitC">Limit for the frost hours [°C].</param>
    /// <exception cref="ArgumentException">The record is shorter than a day.</exception>
    public static WeatherDays Of(WeatherRecord record, double frostLimitC = 0)
    {
        if (record.Hours < 24)
            throw new ArgumentException("The record is shorter than a day.", nameof(record));
        var firstMonth = record.Place.LatitudeDeg >= 0 ? 10 : 4;
        var first = new DateTime(record.Start.Year, firstMonth, 1);
        if (first < record.Start)
            first = first.AddYears(1);
        var start = (int)(first - record.Start).TotalHours;
        var wraps = record.Hours is >= 8736 and <= 8808;
        var days = wraps ? Days : Math.Max(1, Math.Min(Days, (record.Hours - start) / 24));
        if (!wraps && start + 24 > record.Hours)
            (start, first, days) = (0, record.Start.Date, record.Hours / 24);
        int At(int day, int hour) => (start + 24 * day + hour) % record.Hours;
        List<double> Daily(Func<IEnumerable<int>, double> figure) => [.. Enumerable.Range(0, days).Select(d => figure(Enumerable.Range(0, 24).Select(h => At(d, h))))];
        return new WeatherDays
        {
            Title = $"{record.Place.Name}: the winter half-year",
            FirstDay = DateOnly.FromDateTime(first),
            LowestC = Daily(hours => hours.Min(h => record.AirC[h])),
            MeanC = Daily(hours => hours.Average(h => record.AirC[h])),
            HighestC = Daily(hours => hours.Max(h => record.AirC[h])),
            GhiKwhPerM2 = Daily(hours => hours.Sum(h => record.GlobalWPerM2[h]) / 1000),
            FrostHours = Daily(hours => hours.Count(h => record.AirC[h] < frostLimitC)),
            FrostLimitC = frostLimitC,
        };
    }
}
