using DesignSearch.Files.Toml;
using Xunit;

namespace DesignSearch.Files.Tests;

/// <summary>A zero with a minus lies within bounds from 0 and would be told as a fault of the program where a decimal is made of it.</summary>
public sealed class NegativeZeroTests
{
    [Theory]
    [InlineData("-0")]
    [InlineData("-0.0")]
    [InlineData("-0e5")]
    public void A_zero_has_no_sign(string text)
    {
        Assert.True(PlainNumber.TryRead(text, out var number));
        Assert.False(double.IsNegative(number));
        var table = TomlReader.ReadText($"a = {text}\n", "a.toml", new FaultList());
        Assert.False(double.IsNegative(table.Number("a", 0, 1)));
    }

    [Fact]
    public void Other_numbers_keep_theirs()
    {
        Assert.True(PlainNumber.TryRead("-0.5", out var number));
        Assert.Equal(-0.5, number);
    }
}
