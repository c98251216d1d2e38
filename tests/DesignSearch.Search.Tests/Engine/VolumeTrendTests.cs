using DesignSearch.Search.Archive;
using DesignSearch.Search.Engine;
using Xunit;

namespace DesignSearch.Search.Tests;

public class VolumeTrendTests
{
    // The box of the first 32 points reaches from (0, 0) to (10, 10). Measured after 32, 65 and 98 evaluations: 0, then a quarter for (5, 5), then the same.
    [Theory]
    [InlineData(0.1, 33, true)]
    [InlineData(1.5, 66, true)]
    [InlineData(1.5, 67, false)]
    [InlineData(1.0, 66, false)]
    [InlineData(0.2, 66, false)]
    public void Growth_is_that_since_the_last_measure_before_the_window(double fraction, long window, bool less) => Assert.Equal(less, Trend().GrewLessThan(fraction, window));

    [Fact]
    public void The_volume_is_measured_where_enough_was_evaluated()
    {
        Assert.Equal([new(32, 0), new(65, 0.25), new(98, 0.25)], Trend().Points);
        Assert.False(new VolumeTrend(2).GrewLessThan(1, 0));
    }

    private static VolumeTrend Trend()
    {
        var (trend, archive, index) = (new VolumeTrend(2), FrontArchive.For(2), 0L);
        void Take(double first, double second)
        {
            double[] figures = [first, second];
            trend.Take(figures, archive.Add(new([index], new(figures, []), index)), archive);
            trend.Mark(++index);
        }

        Take(10, 0);
        Take(0, 10);
        while (index < 98)
            Take(index == 40 ? 5 : 10, index == 40 ? 5 : 10);
        return trend;
    }
}
