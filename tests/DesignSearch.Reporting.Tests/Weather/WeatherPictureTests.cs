using System.Text;
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
    public void Lists_of_different_length_are_refused()
    {
        var weather = InventedWeather.Winter();
        Assert.Throws<ArgumentException>(() => WeatherPicture.Png(weather with { FrostHours = [1] }));
        Assert.Throws<ArgumentException>(() => WeatherPicture.Png(weather with { MeanC = [], LowestC = [], HighestC = [], GhiKwhPerM2 = [], FrostHours = [] }));
    }
}
