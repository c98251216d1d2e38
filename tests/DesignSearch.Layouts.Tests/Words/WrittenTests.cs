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
    public void A_sentence_writes_every_figure_by_the_same_rules()
    {
        FormattableString inner = $"{-0.04:0.0} kN";
        Assert.Equal("-2.5 K, 0.0 °C, 1620 crowns, 12 of them, 0.0 kN, 0.5", Written.Sentence($"{-2.5:0.0} K, {-0.04:0.0} °C, {1619.5m:0} crowns, {12} of them, {inner}, {0.5}"));
    }

    [Fact]
    public void Parts_of_a_sentence_stand_a_blank_apart() =>
        Assert.Equal("It costs 12 crowns, and 0 K are left.", Written.Sentence($"It costs {12.4:0} crowns,", $"and {-0.2:0} K", $"are left."));

    [Fact]
    public void Several_things_are_joined_as_they_are_spoken()
    {
        Assert.Equal("", Written.Joined([]));
        Assert.Equal("a", Written.Joined(["a"]));
        Assert.Equal("a, b and c", Written.Joined(["a", "b", "c"]));
    }
}
