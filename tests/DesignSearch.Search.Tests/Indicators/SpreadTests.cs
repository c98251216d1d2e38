using Xunit;

namespace DesignSearch.Search.Tests;

public class SpreadTests
{
    [Fact]
    public void Even_gaps_from_end_to_end_have_none() =>
        Assert.Equal(0, Spread.Of([[0, 1], [0.5, 0.5], [0.25, 0.75], [1, 0], [0.75, 0.25]], [0, 1], [1, 0]), 1e-12);

    // By hand, in units of √2/4: gaps 1 and 2, end missed by 1; mean 1.5; (1 + 0.5 + 0.5) / (1 + 3).
    [Fact]
    public void Uneven_gaps_and_a_missed_end_count() =>
        Assert.Equal(0.5, Spread.Of([[0.25, 0.75], [0.5, 0.5], [1, 0]], [0, 1], [1, 0]), 1e-12);

    [Fact]
    public void One_point_covers_nothing() => Assert.Equal(1, Spread.Of([[0.5, 0.5]], [0, 1], [1, 0]));

    // By hand, in units of √2/4: one gap of 2, ends missed by 1 each; 2 / (2 + 2).
    [Fact]
    public void Both_missed_ends_add_up() => Assert.Equal(0.5, Spread.Of([[0.25, 0.75], [0.75, 0.25]], [0, 1], [1, 0]), 1e-12);

    [Fact]
    public void Nothing_at_all_is_refused()
    {
        Assert.Throws<ArgumentNullException>(() => Spread.Of(null!, [0, 1], [1, 0]));
        Assert.Throws<ArgumentNullException>(() => Spread.Of([[0, 1]], null!, [1, 0]));
        Assert.Throws<ArgumentNullException>(() => Spread.Of([[0, 1]], [0, 1], null!));
    }
}
