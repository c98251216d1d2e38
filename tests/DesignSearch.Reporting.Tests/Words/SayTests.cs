using DesignSearch.Reporting.Words;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class SayTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(1432, "1\u202F400")]
    [InlineData(0.437, "0.44")]
    [InlineData(9.96, "10")]
    [InlineData(99.6, "100")]
    [InlineData(7, "7")]
    [InlineData(-0.26, "\u22120.26")]
    [InlineData(0.004, "under 0.01")]
    [InlineData(1234567, "1\u202F200\u202F000")]
    [InlineData(double.NaN, "–")]
    public void Two_figures_and_never_zero_for_something(double value, string expected) => Assert.Equal(expected, Say.TwoFigures(value));

    [Theory]
    [InlineData(-2.3, "\u22122.5\u00A0°C")]
    [InlineData(-0.2, "0.0\u00A0°C")]
    [InlineData(3.74, "3.5\u00A0°C")]
    public void Temperatures_to_half_a_degree(double value, string expected) => Assert.Equal(expected, Say.Celsius(value));

    [Theory]
    [InlineData(1.9, 2, "1.9\u00A0°C")]
    [InlineData(2.2, 2.1, "2.2\u00A0°C")]
    [InlineData(1.996, 2, "1.996\u00A0°C")]
    [InlineData(2.0, 2, "2.0\u00A0°C")]
    [InlineData(-4.3, 2, "\u22124.5\u00A0°C")]
    public void Rounding_never_moves_the_lowest_air_across_the_limit(double value, double limit, string expected) => Assert.Equal(expected, Say.Air(value, limit));

    [Fact]
    public void Money_keeps_its_cents_in_lists_and_drops_them_in_sentences()
    {
        Assert.Equal("1\u202F234.50", Say.Cents(1234.5m));
        Assert.Equal("1\u202F235\u00A0crowns", Say.Money(1234.5m, "crowns"));
    }

    [Fact]
    public void One_of_a_thing_stands_without_its_ending()
    {
        Assert.Equal("1 year", Say.Count(1, "year"));
        Assert.Equal("12 years", Say.Count(12, "year"));
        Assert.Equal("20\u202F000 layouts", Say.Count(20_000, "layout"));
        Assert.Equal("1 hour", Say.Hours(1.02));
        Assert.Equal("1.1 hours", Say.Hours(1.1));
        Assert.Equal("0 hours", Say.Hours(0));
        Assert.Equal("1 frost hour", Say.Hours(1, "frost hour"));
    }

    [Fact]
    public void Lists_of_words_are_joined_as_they_are_spoken()
    {
        Assert.Equal("", Say.Joined([]));
        Assert.Equal("a", Say.Joined(["a"]));
        Assert.Equal("a, b and c", Say.Joined(["a", "b", "c"]));
    }

    [Theory]
    [InlineData("build 6 barrels (1164 L), 2 kW heater: 1620 crowns", "build 6 barrels (1\u202F164\u00A0L), 2\u00A0kW heater: 1\u202F620 crowns")]
    [InlineData("It uses 4150 of 4200 crowns.", "It uses 4\u202F150 of 4\u202F200 crowns.")]
    [InlineData("about 23000; here 1234567.25", "about 23\u202F000; here 1\u202F234\u202F567.25")]
    [InlineData("from 2026-11-27 at 12:00, EN 1234-5, 2019/20, 0.12345 and x1234", "from 2026-11-27 at 12:00, EN 1234-5, 2019/20, 0.12345 and x1234")]
    [InlineData("over a gap of air (EN 1717, category 5; IEC 60529)", "over a gap of air (EN 1717, category 5; IEC 60529)")]
    [InlineData("4.0 m² and 12 m³, 5 m long, 3 months, 20 K·h", "4.0\u00A0m² and 12\u00A0m³, 5\u00A0m long, 3 months, 20\u00A0K·h")]
    public void Sentences_of_a_run_are_set_like_the_pages_own(string written, string expected) => Assert.Equal(expected, PlainText.Sentence(written));

    [Theory]
    [InlineData("6 barrels (1164 L), 2 kW heater", "6 barrels (1\u202F164\u00A0L), 2\u00A0kW heater")]
    [InlineData("pump 4025 with 1500.5 L, EN 12975 of 2006", "pump 4025 with 1\u202F500.5\u00A0L, EN 12975 of 2006")]
    public void A_name_keeps_the_number_of_its_model(string written, string expected) => Assert.Equal(expected, PlainText.Name(written));

    [Fact]
    public void A_name_too_long_is_cut_between_words_where_it_has_any()
    {
        Assert.Equal("edge board of… (23 characters)", PlainText.Cut("edge board of fine foam", 14));
        Assert.Equal(new string('x', 20) + "… (30 characters)", PlainText.Cut(new string('x', 30), 20));
    }
}
