using Xunit;

namespace DesignSearch.Files.Tests;

public sealed class NearWordTests
{
    [Theory]
    [InlineData("prcie", "price")]
    [InlineData("Price", "price")]
    [InlineData("volume", "volume_l")]
    [InlineData("pric", "price")]
    [InlineData("pprice", "price")]
    [InlineData("pxice", "price")]
    [InlineData("pxixe", null)]
    [InlineData("ehigth_m", "height_m")]
    [InlineData("ehigth_n", null)]
    [InlineData("zebra", null)]
    [InlineData("", null)]
    public void Nearest_word_is_guessed(string word, string? expected) => Assert.Equal(expected, NearWord.Of(word, ["price", "volume_l", "height_m"]));

    [Fact]
    public void A_long_word_is_near_to_no_short_one() => Assert.Null(NearWord.Of("zebra", ["m", "kg"]));
}
