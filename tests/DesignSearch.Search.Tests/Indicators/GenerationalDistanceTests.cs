using Xunit;

namespace DesignSearch.Search.Tests;

public class GenerationalDistanceTests
{
    [Fact]
    public void Counts_only_what_is_worse_and_takes_the_nearest_point()
    {
        // From (0, 1): (0.3, 1.4) is 0.5 behind; from (1, 0): (1.6, -2) is 0.6 behind, for what is better there counts nothing.
        double[][] front = [[0, 1], [1, 0]];
        Assert.Equal((0.5 + 0.6) / 2, GenerationalDistance.Plus(front, [[0.3, 1.4], [1.6, -2]]), 12);
        Assert.Equal((0.5 + 0.6) / 2, GenerationalDistance.Plus(front, [[1.6, -2], [0.3, 1.4], [9, 9]]), 12);
    }

    [Fact]
    public void Is_nothing_where_the_front_is_covered_and_endless_where_nothing_was_found()
    {
        Assert.Equal(0, GenerationalDistance.Plus([[1, 2, 3]], [[1, 2, 3], [5, 5, 5]]));
        Assert.Equal(0, GenerationalDistance.Plus([[1, 2, 3]], [[0, 0, 0]]));
        Assert.Equal(double.PositiveInfinity, GenerationalDistance.Plus([[1, 2]], []));
        Assert.Throws<ArgumentNullException>(() => GenerationalDistance.Plus(null!, []));
        Assert.Throws<ArgumentNullException>(() => GenerationalDistance.Plus([[1, 2]], null!));
    }
}
