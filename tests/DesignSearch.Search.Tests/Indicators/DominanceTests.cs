using DesignSearch.Search.Indicators;
using Xunit;

namespace DesignSearch.Search.Tests;

public class DominanceTests
{
    [Theory]
    [InlineData(1, 2, 1, 3, true)]
    [InlineData(1, 2, 1, 2, false)]
    [InlineData(1, 3, 2, 2, false)]
    [InlineData(2, 2, 1, 1, false)]
    public void Of_objectives(double a1, double a2, double b1, double b2, bool expected) =>
        Assert.Equal(expected, Dominance.Dominates([a1, a2], [b1, b2]));

    [Fact]
    public void Lesser_violation_wins_before_objectives()
    {
        Assert.True(Dominance.Dominates(new([9, 9], [0.1]), new Evaluation([1, 1], [0.2])));
        Assert.True(Dominance.Dominates(new([9, 9], [0]), new Evaluation([1, 1], [0.2])));
        Assert.False(Dominance.Dominates(new([1, 1], [0.2]), new Evaluation([9, 9], [0.2])));
    }

    [Fact]
    public void Better_in_two_of_three_is_better_still() => Assert.True(Dominance.Dominates([1, 1, 5], [2, 2, 5]));

    [Fact]
    public void Among_equal_violations_the_objectives_decide_only_where_there_is_none()
    {
        Assert.True(Dominance.Dominates(new([1, 1], [0]), new Evaluation([1, 2], [0])));
        Assert.False(Dominance.Dominates(new([1, 2], [0]), new Evaluation([1, 1], [0])));
        Assert.False(Dominance.Dominates(new([1, 1], [0.3]), new Evaluation([1, 1], [0.3])));
        Assert.Throws<ArgumentNullException>(() => Dominance.Dominates(null!, new Evaluation([1], [])));
        Assert.Throws<ArgumentNullException>(() => Dominance.Dominates(new Evaluation([1], []), null!));
    }
}
