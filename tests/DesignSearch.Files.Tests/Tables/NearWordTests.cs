using Xunit;

namespace DesignSearch.Files.Tests;

public sealed class NearWordTests
{
    [Theory]
    [InlineData("prcie", "price")]
    [InlineData("Price", "price")]
    [InlineData("volume", "volume_l")]
    [InlineData("zebra", null)]
    [InlineData("", null)]
    public void Nearest_word_is_guessed(string word, string? expected) => Assert.Equal(expected, NearWord.Of(word, ["price", "volume_l", "height_m"]));
}
