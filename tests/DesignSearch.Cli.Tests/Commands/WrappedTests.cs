using CsCheck;
using DesignSearch.Cli.Terminal;
using Xunit;

namespace DesignSearch.Cli.Tests;

public sealed class WrappedTests
{
    [Fact]
    public void A_sentence_is_broken_between_words() => Assert.Equal(
        ["Build lining, seals, edge", "  board, 4 barrels (776 L),", "  1 kW heater: 1440 crowns"],
        Wrapped.Lines("Build lining, seals, edge board, 4 barrels (776 L), 1 kW heater: 1440 crowns", 28, 2));

    [Fact]
    public void Blanks_before_the_first_word_are_no_place_to_break() =>
        Assert.Equal(["  one two three four", "five six"], Wrapped.Lines("  one two three four five six", 21));

    [Fact]
    public void No_word_is_lost_and_no_line_is_too_wide() =>
        Gen.Select(Gen.String[Gen.Char["abc .,"], 0, 300], Gen.Int[1, 90], Gen.Int[0, 12]).Sample((text, columns, indent) =>
        {
            var lines = Wrapped.Lines(text, columns, indent).ToList();
            Assert.Equal(text.Split(' ', StringSplitOptions.RemoveEmptyEntries), string.Join(' ', lines).Split(' ', StringSplitOptions.RemoveEmptyEntries));
            var longest = text.Split(' ').Max(w => w.Length);
            Assert.All(lines, l => Assert.True(l.TrimEnd().Length <= Math.Max(Math.Max(20, columns - 1), longest + indent), l));
        });
}
