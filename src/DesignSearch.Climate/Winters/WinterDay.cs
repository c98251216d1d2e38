using DesignSearch.Climate.Weather;

namespace DesignSearch.Climate.Winters;

/// <summary>One day of a record.</summary>
/// <param name="Date">The day; its year is nominal for typical and made winters.</param>
/// <param name="LowC">Lowest hour mean [°C].</param>
/// <param name="MeanC">Mean [°C].</param>
/// <param name="SunKwhPerM2">Global irradiation on the level [kWh/m²].</param>
public sealed record WinterDay(DateOnly Date, double LowC, double MeanC, double SunKwhPerM2)
{
    /// <summary>Every whole day of a record, in turn.</summary>
    /// <param name="record">The record.</param>
    public static IReadOnlyList<WinterDay> Of(WeatherRecord record)
    {
        var (air, global) = (record.AirC, record.GlobalWPerM2);
        var days = new List<WinterDay>();
        for (var h = (24 - record.Start.Hour) % 24; h + 24 <= air.Length; h += 24)
        {
            var day = air[h..(h + 24)];
            days.Add(new(DateOnly.FromDateTime(record.Start.AddHours(h)), day.Min(), day.Average(), global[h..(h + 24)].Sum() / 1000));
        }

        return days;
    }
}
