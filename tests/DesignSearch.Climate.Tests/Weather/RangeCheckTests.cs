using DesignSearch.Climate.Weather;
using DesignSearch.Files;
using Xunit;

namespace DesignSearch.Climate.Tests;

/// <summary>Values that cannot be, at the very ends of what can: single ones become gaps, many are a wrong unit.</summary>
public sealed class RangeCheckTests
{
    private const int Rows = 2400;

    public static TheoryData<WeatherField, string, double, double, double, string, string> Ends => new()
    {
        { WeatherField.Air, "air temperature", -60, 55, 7, "°C", "°F" },
        { WeatherField.DewPoint, "dew point", -80, 40, 3, "°C", "°F" },
        { WeatherField.Humidity, "humidity", 0, 105, 60, "%", "another unit" },
        { WeatherField.Wind, "wind", 0, 60, 3, "m/s", "km/h" },
        { WeatherField.Global, "global irradiance", -20, 1700, 200, "W/m²", "kJ/m²" },
        { WeatherField.Diffuse, "diffuse irradiance", -20, 1200, 90, "W/m²", "kJ/m²" },
        { WeatherField.SkyLongWave, "sky radiation", 50, 700, 300, "W/m²", "another unit" },
    };

    [Theory]
    [MemberData(nameof(Ends))]
    public void An_end_is_kept_and_what_is_beyond_it_becomes_a_gap(WeatherField field, string name, double low, double high, double usual, string unit, string likely)
    {
        Assert.NotEqual(unit, likely);
        var values = Grids.Of(Rows, _ => usual);
        (values[5], values[6], values[7], values[8]) = (low, high, low - 1, high + 1);
        var (grid, faults, repairs) = Cleaned((field, values));
        Assert.Empty(faults);
        var found = grid.Values[field];
        Assert.Equal([low, high], found[5..7]);
        Assert.All(found[7..9], v => Assert.True(double.IsNaN(v)));
        Assert.Equal(Rows - 2, found.Count(v => !double.IsNaN(v)));
        Assert.Equal(FormattableString.Invariant($"2 values of the {name} cannot be, the first {low - 1:0.#} in line 17; they were taken as gaps."), Assert.Single(repairs));
    }

    // One in two hundred, ten at least: more of them are no slips of a logger.
    [Theory]
    [MemberData(nameof(Ends))]
    public void Many_of_them_are_a_wrong_unit(WeatherField field, string name, double low, double high, double usual, string unit, string likely)
    {
        double[] Wrong(int rows, int wrong) => Grids.Of(rows, i => i % 100 == 3 && i / 100 < wrong ? high + 2 : usual);
        Assert.Empty(Cleaned((field, Wrong(Rows, 12))).Faults);
        var fault = Assert.Single(Cleaned((field, Wrong(Rows, 13))).Faults);
        Assert.Equal(FormattableString.Invariant($"{name} in {unit}: 13 values are outside {low} to {high}, the first {high + 2:0.#} in line 13 (is it {likely}?)"), fault.Expected);
        Assert.Empty(Cleaned((field, Wrong(1200, 10))).Faults);
        Assert.Single(Cleaned((field, Wrong(1200, 11))).Faults);
    }

    [Fact]
    public void Cloud_that_cannot_be_is_no_reason_to_refuse_a_file()
    {
        var (grid, faults, repairs) = Cleaned((WeatherField.Cloud, Grids.Of(Rows, i => i % 2 == 0 ? 101 : 100)));
        Assert.Empty(faults);
        Assert.Equal(Rows / 2, grid.Values[WeatherField.Cloud].Count(double.IsNaN));
        Assert.StartsWith("1200 values of the cloud cannot be", Assert.Single(repairs), StringComparison.Ordinal);
    }

    [Fact]
    public void One_is_told_as_one()
    {
        var air = Grids.Of(Rows, i => i == 40 ? -61.25 : 5);
        Assert.Equal("1 value of the air temperature cannot be, the first -61.3 in line 50; it was taken as a gap.", Assert.Single(Cleaned((WeatherField.Air, air)).Repairs));
    }

    [Theory]
    [InlineData(WeatherField.Air, "The air temperature")]
    [InlineData(WeatherField.DewPoint, "The dew point")]
    public void Kelvin_is_taken_as_kelvin_where_every_value_is_above_150(WeatherField field, string name)
    {
        var (grid, faults, repairs) = Cleaned((field, Grids.Of(Rows, i => 270 + i % 7)));
        Assert.Empty(faults);
        Assert.Equal(-3.15, grid.Values[field][0], 1e-9);
        Assert.Equal(2.85, grid.Values[field][6], 1e-9);
        Assert.Equal(name + " was taken as kelvin, since every value is above 150.", Assert.Single(repairs));
        Assert.Single(Cleaned((field, Grids.Of(Rows, i => i == 9 ? 149 : 270 + i % 7))).Faults);
    }

    [Fact]
    public void Humidity_may_be_a_fraction_of_one()
    {
        var (grid, _, repairs) = Cleaned((WeatherField.Humidity, Grids.Of(101, i => i == 0 ? 1.05 : 0.4)));
        Assert.Equal([105, 40], grid.Values[WeatherField.Humidity][..2].Select(v => Math.Round(v, 9)));
        Assert.StartsWith("The humidity was taken as a fraction of 1", Assert.Single(repairs), StringComparison.Ordinal);
        Assert.Equal(0.4, Cleaned((WeatherField.Humidity, Grids.Of(100, _ => 0.4))).Grid.Values[WeatherField.Humidity][1]);
        Assert.Equal(0.4, Cleaned((WeatherField.Humidity, Grids.Of(101, i => i == 0 ? 1.06 : 0.4))).Grid.Values[WeatherField.Humidity][1]);
    }

    [Theory]
    [InlineData(6001, 32.1, "air temperature in °C: its mean is 32.1 (is it °F?)")]
    [InlineData(6000, 32.1, "")]
    [InlineData(6001, 32.0, "")]
    public void A_year_hotter_than_any_is_another_unit(int rows, double mean, string expected) =>
        Assert.Equal(expected, string.Concat(Cleaned((WeatherField.Air, Grids.Of(rows, _ => mean))).Faults.Select(f => f.Expected)));

    [Theory]
    [InlineData(501, 9.5, "refused")]
    [InlineData(501, 9.0, "told")]
    [InlineData(501, 6.5, "told")]
    [InlineData(501, 6.0, "")]
    [InlineData(500, 9.5, "")]
    [InlineData(500, 8.0, "")]
    public void A_place_where_a_gale_blows_all_the_year_is_doubted(int rows, double mean, string what)
    {
        var (_, faults, repairs) = Cleaned((WeatherField.Wind, Grids.Of(rows, _ => mean)));
        Assert.Equal(what == "refused" ? [FormattableString.Invariant($"wind in m/s: its mean is {mean:0.0} (is it km/h?)")] : [], faults.Select(f => f.Expected));
        Assert.Equal(what == "told" ? 1 : 0, repairs.Count(r => r.StartsWith(FormattableString.Invariant($"The wind averages {mean:0.0} m/s, which is a gale-swept place"), StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(501, 29.9, true)]
    [InlineData(501, 30.0, false)]
    [InlineData(501, 0.0, false)]
    [InlineData(500, 29.9, false)]
    public void Light_that_never_reaches_30_is_in_another_unit(int rows, double most, bool refused)
    {
        var faults = Cleaned((WeatherField.Global, Grids.Of(rows, i => i % 24 == 12 ? most : 0))).Faults;
        Assert.Equal(refused ? [FormattableString.Invariant($"global irradiance in W/m²: its highest is {most:0.00} (is it kW/m² or MJ/m²?)")] : [], faults.Select(f => f.Expected));
    }

    [Theory]
    [InlineData(6, 5.1, true)]
    [InlineData(5, 5.1, false)]
    [InlineData(6, 5.0, false)]
    public void A_dew_point_above_the_air_in_more_than_one_row_of_twenty_is_doubted(int above, double dewC, bool doubted)
    {
        var doubts = new List<string>();
        var faults = new FaultList();
        OtherDoubts.Say("w.csv", Grids.Hourly((WeatherField.Air, Grids.Of(100, _ => 4)), (WeatherField.DewPoint, Grids.Of(100, i => i < above ? dewC : 3))), faults, doubts);
        Assert.True(faults.IsEmpty);
        Assert.Equal(doubted ? ["In 6 % of the rows the dew point is above the air, which cannot be: are the two columns exchanged?"] : [], doubts);
    }

    [Theory]
    [InlineData(51, true)]
    [InlineData(50, false)]
    public void A_dew_point_above_the_air_in_most_rows_is_refused(int above, bool refused)
    {
        var (faults, doubts) = (new FaultList(), new List<string>());
        OtherDoubts.Say("w.csv", Grids.Hourly((WeatherField.Air, Grids.Of(100, _ => 4)), (WeatherField.DewPoint, Grids.Of(100, i => i < above ? 5.1 : 3))), faults, doubts);
        Assert.Equal(refused ? ["a dew point under the air; in 51 % of the rows it is above: the two columns are exchanged"] : [], faults.Faults.Select(f => f.Expected));
        Assert.Equal(refused ? 0 : 1, doubts.Count);
    }

    [Theory]
    [InlineData(501, 0.2, true)]
    [InlineData(500, 0.2, false)]
    [InlineData(501, 0.3, false)]
    public void An_anemometer_that_stands_still_is_doubted(int rows, double mean, bool doubted)
    {
        var doubts = new List<string>();
        OtherDoubts.Say("w.csv", Grids.Hourly((WeatherField.Air, Grids.Of(rows + 3, _ => 4)), (WeatherField.Wind, Grids.Of(rows + 3, i => i < rows ? mean : double.NaN))), new(), doubts);
        Assert.Equal(doubted ? 1 : 0, doubts.Count(d => d.StartsWith("The wind averages 0.2 m/s: an anemometer that stands still", StringComparison.Ordinal)));
        Assert.Equal(doubted ? 1 : 0, doubts.Count);
    }

    private static (SampleGrid Grid, IReadOnlyList<InputFault> Faults, List<string> Repairs) Cleaned((WeatherField, double[]) column)
    {
        var (grid, faults, repairs) = (Grids.Hourly(column), new FaultList(), new List<string>());
        new RangeCheck("w.csv", grid, faults, repairs).Clean();
        Assert.All(faults.Faults, f => Assert.Equal(("w.csv", 0, 0), (f.File, f.Line, f.Column)));
        return (grid, faults.Faults, repairs);
    }
}
