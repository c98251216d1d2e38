using DesignSearch.Layouts.Words;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class WrittenTests
{
    [Theory]
    [InlineData(0, "hour", "0 hours")]
    [InlineData(1, "hour", "1 hour")]
    [InlineData(2, "hour", "2 hours")]
    [InlineData(1, "battery", "1 battery")]
    [InlineData(3, "battery", "3 batteries")]
    [InlineData(2, "day", "2 days")]
    [InlineData(2, "box", "2 boxes")]
    [InlineData(2, "winch", "2 winches")]
    [InlineData(2, "brush", "2 brushes")]
    [InlineData(2, "bus", "2 buses")]
    [InlineData(-1, "step", "-1 steps")]
    public void One_stands_alone_and_more_have_their_ending(int count, string noun, string expected) => Assert.Equal(expected, Written.Count(count, noun));

    [Fact]
    public void A_plural_of_its_own_is_kept()
    {
        Assert.Equal("2 feet", Written.Count(2, "foot", "feet"));
        Assert.Equal("1 foot", Written.Count(1, "foot", "feet"));
        Assert.Equal("feet", Written.Noun(0, "foot", "feet"));
    }

    [Theory]
    [InlineData(0.5, "0.5 hours")]
    [InlineData(1, "1 hour")]
    [InlineData(1.04, "1 hour")]
    [InlineData(0.96, "1 hour")]
    [InlineData(1.06, "1.1 hours")]
    [InlineData(-0.04, "0 hours")]
    public void A_broken_amount_goes_by_what_is_written(double amount, string expected) => Assert.Equal(expected, Written.Amount(amount, 1, "hour"));

    [Theory]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(-0.0, 0, "0")]
    [InlineData(-0.4, 0, "0")]
    [InlineData(-0.5, 0, "-1")]
    [InlineData(0.25, 1, "0.3")]
    [InlineData(-12.345, 2, "-12.35")]
    [InlineData(1234567.8, 0, "1234568")]
    [InlineData(double.NaN, 1, "–")]
    [InlineData(double.NegativeInfinity, 1, "–")]
    public void No_minus_stands_before_nothing(double value, int decimals, string expected) => Assert.Equal(expected, Written.Number(value, decimals));

    [Fact]
    public void Units_stand_behind_a_space()
    {
        Assert.Equal("-2.5 K", Written.Kelvin(-2.5));
        Assert.Equal("0 K", Written.Kelvin(-0.3, 0));
        Assert.Equal("0.0 °C", Written.Celsius(-0.04));
        Assert.Equal("20 K·h", Written.DegreeHours(20.4));
        Assert.Equal("2000 W", Written.Watts(2000));
        Assert.Equal("12.5 kW", Written.Watts(12_500));
        Assert.Equal("310 kWh", Written.Kwh(309.7));
        Assert.Equal("4.0 m", Written.Metres(4));
        Assert.Equal("4.0 m²", Written.SquareMetres(4));
        Assert.Equal("1164 L", Written.Litres(1164.2));
        Assert.Equal("0 %", Written.Percent(-0.001));
        Assert.Equal("81 %", Written.Percent(0.814));
        Assert.Equal("1620 crowns", Written.Money(1619.5m, "crowns"));
        Assert.Equal("0", Written.Money(-0.2m));
    }

    [Fact]
    public void A_figure_sheds_needless_decimals()
    {
        Assert.Equal("2", Written.Brief(2));
        Assert.Equal("2.5", Written.Brief(2.46));
        Assert.Equal("0", Written.Brief(-0.04));
        Assert.Equal("3", Written.Brief(2.6, 0));
    }

    [Fact]
    public void Several_things_are_joined_as_they_are_spoken()
    {
        Assert.Equal("", Written.Joined([]));
        Assert.Equal("a", Written.Joined(["a"]));
        Assert.Equal("a, b and c", Written.Joined(["a", "b", "c"]));
    }
}
