using DesignSearch.Reporting.Weather;

namespace DesignSearch.Reporting.Tests;

/// <summary>A winter made up for tests of the weather picture.</summary>
internal static class InventedWeather
{
    public static WeatherDays Winter(string title = "Frost Hollow, an invented valley, 1 November to 31 March")
    {
        var days = Enumerable.Range(0, 151).ToList();
        var mean = days.Select(d => 5 - (7 * Math.Sin(Math.PI * (d + 20) / 190)) + (3.1 * Math.Sin(d * 0.7)) + (1.7 * Math.Sin(d * 2.3))).ToList();
        var swing = days.Select(d => 3.5 + (2 * Math.Sin(d * 1.1))).ToList();
        return new()
        {
            Title = title,
            FirstDay = new(2001, 11, 1),
            LowestC = [.. days.Select(d => mean[d] - swing[d])],
            MeanC = mean,
            HighestC = [.. days.Select(d => mean[d] + swing[d])],
            GhiKwhPerM2 = [.. days.Select(d => Math.Max(0.1, 1.6 + (1.2 * Math.Cos(2 * Math.PI * (d + 10) / 190)) + (0.8 * Math.Sin(d * 1.9))))],
            FrostHours = [.. days.Select(d => Math.Clamp(Math.Round(12 + ((2 - mean[d]) / swing[d] * 10)), 0, 24))],
            FrostLimitC = 2,
        };
    }
}
