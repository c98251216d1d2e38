using System.Text;
using DesignSearch.Reporting.Weather;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class WeatherPictureTests
{
    [Fact]
    public void The_same_weather_gives_the_same_bytes_and_says_its_format()
    {
        var png = WeatherPicture.Png(InventedWeather.Winter());
        Assert.Equal(png, WeatherPicture.Png(InventedWeather.Winter()));
        Assert.Contains(WeatherPicture.Format, Encoding.Latin1.GetString(png, 0, 200), StringComparison.Ordinal);
    }

    [Fact]
    public void Other_weather_gives_another_picture()
    {
        var weather = InventedWeather.Winter();
        Assert.NotEqual(WeatherPicture.Png(weather), WeatherPicture.Png(weather with { FrostHours = [.. weather.FrostHours.Select(_ => 3.0)] }));
    }

    [Fact]
    public void Gaps_a_single_day_and_hostile_titles_are_drawn()
    {
        var weather = InventedWeather.Winter(HostileRun.Texts[7] + HostileRun.Texts[9]);
        Assert.NotEmpty(WeatherPicture.Png(weather with { LowestC = [.. weather.LowestC.Select((v, d) => d is > 20 and < 40 ? double.NaN : v)], GhiKwhPerM2 = [.. weather.GhiKwhPerM2.Select(_ => double.NaN)] }));
        Assert.NotEmpty(WeatherPicture.Png(weather with { LowestC = [1], MeanC = [2], HighestC = [3], GhiKwhPerM2 = [0], FrostHours = [4] }));
    }

    [Fact]
    public void The_finding_names_the_coldest_night_and_counts_the_frost()
    {
        var weather = InventedWeather.Winter() with { FirstDay = new(2001, 5, 1), LowestC = [3, -4.26, 1], MeanC = [4, 0, 2], HighestC = [5, 3, 4], GhiKwhPerM2 = [1, 2, 3], FrostHours = [0, 7, 2], FrostLimitC = 2 };
        Assert.Equal("Lowest −4.3 °C on 2 May; 9 hours below 2 °C, spread over 2 of 3 days", weather.Finding);
        Assert.Equal("", (weather with { LowestC = [double.NaN, double.NaN, double.NaN] }).Finding);
    }

    [Fact]
    public void Lists_of_different_length_are_refused()
    {
        var weather = InventedWeather.Winter();
        Assert.Throws<ArgumentException>(() => WeatherPicture.Png(weather with { FrostHours = [1] }));
        Assert.Throws<ArgumentException>(() => WeatherPicture.Png(weather with { MeanC = [], LowestC = [], HighestC = [], GhiKwhPerM2 = [], FrostHours = [] }));
    }
}
