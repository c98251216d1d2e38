using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class WilsonIntervalTests
{
    private const string Source = "Newcombe 1998, Two-sided confidence intervals for the single proportion, Statistics in Medicine 17, table I, score method without continuity correction (from memory)";

    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0.0000, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void The_interval_is_that_of_the_published_table(int successes, int trials, double low, double high)
    {
        var ours = WilsonInterval.Of(successes, trials);
        Validation.Equal($"unseen-winters interval {successes}/{trials} low", "lower end of the 95 % interval", low, ours.Low, 0.00005, Source, "WilsonInterval");
        Validation.Equal($"unseen-winters interval {successes}/{trials} high", "upper end of the 95 % interval", high, ours.High, 0.00005, Source, "WilsonInterval");
    }

    [Fact]
    public void Success_and_failure_are_mirror_images_and_the_share_lies_inside()
    {
        for (var held = 0; held <= 30; held++)
        {
            var (low, high) = WilsonInterval.Of(held, 30);
            var mirrored = WilsonInterval.Of(30 - held, 30);
            Assert.Equal(low, 1 - mirrored.High, 1e-12);
            Assert.InRange(held / 30.0, low, high);
            Assert.InRange(high - low, 0.1, 0.4);
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => WilsonInterval.Of(3, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => WilsonInterval.Of(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => WilsonInterval.Of(-1, 30));
    }
}
