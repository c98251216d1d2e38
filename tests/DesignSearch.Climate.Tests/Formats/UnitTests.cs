using DesignSearch.Climate.Formats;
using DesignSearch.Climate.Weather;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Every unit that a column may state, by one of its figures in the program's own unit.</summary>
public sealed class UnitTests
{
    [Theory]
    [InlineData("C", 12.5, 12.5)]
    [InlineData("°C", 12.5, 12.5)]
    [InlineData("ºC", 12.5, 12.5)]
    [InlineData("deg C", 12.5, 12.5)]
    [InlineData("Celsius", 12.5, 12.5)]
    [InlineData("degree Celsius", 12.5, 12.5)]
    [InlineData("\uFFFDC", 12.5, 12.5)]
    [InlineData("%", 80, 80)]
    [InlineData("m/s", 3, 3)]
    [InlineData("m s-1", 3, 3)]
    [InlineData("W/m²", 500, 500)]
    [InlineData("W/m^2", 500, 500)]
    [InlineData("W m-2", 500, 500)]
    [InlineData("F", 50, 10)]
    [InlineData("°F", 14, -10)]
    [InlineData("ºF", 212, 100)]
    [InlineData("degF", 32, 0)]
    [InlineData("Fahrenheit", 50, 10)]
    [InlineData("K", 283.15, 10)]
    [InlineData("kelvin", 273.15, 0)]
    [InlineData("fraction", 0.8, 80)]
    [InlineData("0-1", 0.8, 80)]
    [InlineData("okta", 8, 100)]
    [InlineData("oktas", 4, 50)]
    [InlineData("tenths", 7, 70)]
    [InlineData("km/h", 36, 10)]
    [InlineData("kmh", 18, 5)]
    [InlineData("kph", 18, 5)]
    [InlineData("mph", 100, 44.704)]
    [InlineData("mp/h", 10, 4.4704)]
    [InlineData("kn", 10, 5.14444)]
    [InlineData("kt", 10, 5.14444)]
    [InlineData("knots", 10, 5.14444)]
    [InlineData("kW/m²", 0.5, 500)]
    [InlineData("Wh/m²", 250, 500)]
    [InlineData("Wh/m2/hour", 250, 500)]
    [InlineData("W-hr/m²", 250, 500)]
    [InlineData("kWh/m2", 0.25, 500)]
    [InlineData("kJ/m2", 900, 500)]
    [InlineData("MJ/m2", 0.9, 500)]
    [InlineData("MJ/hr", 0.9, 500)]
    [InlineData("MJ/m2/hr", 0.9, 500)]
    [InlineData("MJ/m2/hour", 0.9, 500)]
    [InlineData("J/m²", 900_000, 500)]
    public void A_figure_of_half_an_hour_is_what_it_is(string unit, double figure, double expected)
    {
        var (factor, offset) = WeatherUnit.Find(unit, 0.5)!.Value;
        Assert.Equal(expected, (figure * factor) + offset, 1e-9);
    }

    [Theory]
    [InlineData("furlong")]
    [InlineData("")]
    [InlineData("hPa")]
    public void What_is_no_unit_of_these_is_none(string unit) => Assert.Null(WeatherUnit.Find(unit, 1));

    [Theory]
    [InlineData(WeatherField.Air, "air temperature")]
    [InlineData(WeatherField.Global, "global irradiance on the level")]
    [InlineData(WeatherField.High, "daily high")]
    [InlineData(WeatherField.Low, "daily low")]
    [InlineData(WeatherField.Wind, "Wind")]
    public void A_field_has_its_words(WeatherField field, string words) => Assert.Equal(words, TableColumns.Plain(field));

    // What comes most often; of steps that come equally often the shortest; an hour where there is none.
    [Theory]
    [InlineData(new double[0], 60)]
    [InlineData(new double[] { 0 }, 60)]
    [InlineData(new double[] { 0, 0, 0 }, 60)]
    [InlineData(new double[] { 0, 30, 60, 120, 150 }, 30)]
    [InlineData(new double[] { 0, 60, 120, 150 }, 60)]
    [InlineData(new double[] { 0, 60, 90 }, 30)]
    [InlineData(new double[] { 100, 40, 55, 70 }, 15)]
    [InlineData(new double[] { 0, 9.6, 20.2 }, 10)]
    public void The_usual_step_is_the_commonest(double[] minutes, int step) => Assert.Equal(step, TimeSteps.UsualMinutes([.. minutes.Select(m => Grids.Start.AddMinutes(m))]));

    // Reports at 9:50 and 10:20 both belong to ten o'clock; the nearer is taken, and what it lacks from the other.
    [Fact]
    public void Each_hour_takes_what_was_read_nearest_to_it()
    {
        var repairs = new List<string>();
        List<DateTime> stamps = [.. new[] { 590.0, 620, 570, 660, 689, 690 }.Select(m => Grids.Start.AddMinutes(m))];
        var (at, lines, values) = NearestHours.Take(stamps, [1, 2, 3, 4, 5, 6], [[1, 2, 3, 4, 5, 6], [double.NaN, 20, 30, 40, 50, 60]], repairs);
        Assert.Equal([10, 11, 12], at.Select(t => t.Hour));
        Assert.Equal([1, 4, 6], lines);
        Assert.Equal([1, 4, 6], values[0]);
        Assert.Equal([20, 40, 60], values[1]);
        Assert.Equal(["6 reports were put on 3 whole hours: each hour takes what was read nearest to it, within half an hour."], repairs);
        repairs.Clear();
        NearestHours.Take([.. new[] { 600.0, 660 }.Select(m => Grids.Start.AddMinutes(m))], [1, 2], [[1, 2]], repairs);
        Assert.Empty(repairs);
    }
}
