using DesignSearch.Climate.Weather;
using DesignSearch.Climate.Winters;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class LoggerTests
{
    private static readonly MadeSky Sky = new();

    [Theory]
    [InlineData("Date Time,Temp (°C)", "yyyy-MM-dd HH:mm:ss", 1, 0, ",")]
    [InlineData("#,Date Time,Temp(C)", "dd/MM/yyyy HH:mm", 1, 0, "#")]
    [InlineData("Time;Temperature;RH", "dd.MM.yyyy HH:mm", 1, 0, ";")]
    [InlineData("Time,Temp(F)", "MM/dd/yyyy hh:mm tt", 1.8, 32, ",")]
    public void Temperature_alone_is_joined_to_a_made_up_sun(string head, string format, double factor, double offset, string style)
    {
        var text = "# latitude: -44.2\n# longitude: 169.8\n# zone_hours: 11\n" + head + "\n" + Sky.Rows(30, t =>
        {
            var air = (Sky.Air(t) * factor + offset).ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
            var stamp = t.ToString(format, System.Globalization.CultureInfo.InvariantCulture);
            return style switch { ";" => stamp + ";" + air.Replace('.', ',') + ";80", "#" => "7," + stamp + "," + air, _ => stamp + "," + air };
        });
        var record = TempFile.Read(text, new() { Monthly = Means() });
        Assert.Equal(365 * 24, record.Hours);
        foreach (var month in record.Summary.Months)
        {
            Assert.Equal(Sky.MonthAir(month.Month), month.MeanC, 0.05);
            Assert.Equal(Means().Months[month.Month - 1].GhiKwhPerM2Day, month.GhiKwhPerM2Day, 0.01);
        }

        Assert.All(record.Origins[WeatherField.Global], o => Assert.Equal(FieldOrigin.Synthesised, o));
        Assert.All(record.Origins[WeatherField.Air], o => Assert.Equal(FieldOrigin.Measured, o));
        Assert.Contains(record.Repairs, r => r.Contains("no sun", StringComparison.Ordinal));
        Assert.Equal(365 * 24, record.WindMPerS.Length);
        Assert.Equal(Means().Months[0].WindMPerS, record.WindMPerS.Average(), 0.3);
    }

    [Fact]
    public void Without_means_the_sun_comes_from_the_daily_range()
    {
        var text = "# latitude: -44.2\n# longitude: 169.8\n# zone_hours: 11\nTime,Temp\n" + Sky.Rows(60, t => MadeSky.F($"{t:yyyy-MM-dd HH:mm},{Sky.Air(t):0.00}"));
        var record = TempFile.Read(text);
        Assert.InRange(record.GlobalWPerM2.Average(), 80, 250);
        Assert.Contains(record.Repairs, r => r.Contains("15 %", StringComparison.Ordinal));
    }

    [Fact]
    public void Summer_time_is_taken_out()
    {
        // Southern summer time: to the first Sunday of April, from the last Sunday of September.
        bool Summer(DateTime t) => t < new DateTime(2021, 4, 4, 2, 0, 0) || t >= new DateTime(2021, 9, 26, 2, 0, 0);
        var text = "# latitude: -44.2\n# longitude: 169.8\n# zone_hours: 11\nTime,Temp\n" + Sky.Rows(60, t => MadeSky.F($"{t.AddHours(Summer(t) ? 1 : 0):yyyy-MM-dd HH:mm},{Sky.Air(t):0.00}"));
        var record = TempFile.Read(text);
        Assert.Contains(record.Repairs, r => r.Contains("daylight saving", StringComparison.Ordinal));
        Assert.Equal(365 * 24, record.Hours);
        for (var h = 24; h < record.Hours - 24; h += 11)
            Assert.Equal(Sky.Air(record.Start.AddHours(h + 0.5)), record.AirC[h], 0.2);
    }

    // Some loggers write the hour that ends at midnight with the day that ends there.
    [Fact]
    public void Midnight_behind_the_last_hour_of_a_day_ends_that_day()
    {
        // Warm and cold spells, so that one midnight is not like the next.
        static double Air(DateTime t) => Sky.Air(t) + (4 * Math.Sin(2 * Math.PI * (t - new DateTime(2021, 1, 1)).TotalDays / 5));
        var text = "# latitude: -44.2\n# longitude: 169.8\n# zone_hours: 11\nTime,Temp\n" + Sky.Rows(60, t =>
            MadeSky.F($"{(t.Hour == 0 ? t.AddDays(-1).Date : t):yyyy-MM-dd HH:mm},{Air(t):0.00}"), 60);
        var record = TempFile.Read(text);
        Assert.InRange(record.Hours, 8758, 8762);
        for (var h = 24; h < record.Hours - 24; h++)
            Assert.Equal(Air(record.Start.AddHours(h + 0.5)), record.AirC[h], 0.3);
    }

    [Fact]
    public void Fault_codes_of_sensors_become_gaps()
    {
        var n = 0;
        var text = "# latitude: -44.2\n# longitude: 169.8\nTime,Temp\n" + Sky.Rows(60, t => MadeSky.F($"{t:yyyy-MM-dd HH:mm},{(++n % 2000 == 0 ? 85 : n % 2001 == 0 ? -127 : Sky.Air(t)):0.00}"));
        var record = TempFile.Read(text);
        Assert.InRange(record.AirC.Max(), 10, 30);
        Assert.Contains(record.Repairs, r => r.Contains("cannot be", StringComparison.Ordinal));
    }

    private static MonthlyClimate Means() => new(Sky.Place, [.. Enumerable.Range(1, 12).Select(m => new MonthMeans(Sky.MonthAir(m), Sky.MonthAir(m) - 5, Math.Round(Sky.MonthGhi(m), 2), 2.5, 75))]);
}
