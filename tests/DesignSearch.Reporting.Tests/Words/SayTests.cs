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
    public void Lists_of_words_are_joined_as_they_are_spoken()
    {
        Assert.Equal("", Say.Joined([]));
        Assert.Equal("a", Say.Joined(["a"]));
        Assert.Equal("a, b and c", Say.Joined(["a", "b", "c"]));
    }
}
