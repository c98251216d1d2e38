using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>Warm water below cold: one pass of mixing keeps the heat, leaves what stands well as it is, and leaves at most 3/8 of what stood upside down.</summary>
public sealed class MixingTests
{
    [Fact]
    public void One_pass_keeps_the_heat_and_leaves_at_most_three_eighths()
    {
        var random = new Random(5);
        var worst = 0.0;
        for (var draw = 0; draw < 20_000; draw++)
        {
            // Coarse draws too, for the worst case has equal neighbours.
            double[] before = [.. Enumerable.Range(0, 4).Select(_ => draw % 2 == 0 ? random.NextDouble() : random.Next(3) / 2.0)];
            var after = Mixed(before);
            Assert.Equal(before.Sum(), after.Sum(), 12);
            Assert.InRange(after.Max() - after.Min(), 0, before.Max() - before.Min() + 1e-12);
            if (before.SequenceEqual(before.OrderDescending()))
                Assert.Equal(before, after);
            if (before.Max() > before.Min())
                worst = Math.Max(worst, (after[3] - after[0]) / (before.Max() - before.Min()));
        }

        Assert.Equal(0.375, worst, 9);
    }

    [Fact]
    public void The_passes_that_follow_finish_it()
    {
        double[] tank = [0, 0, 0.5, 0.5];
        for (var pass = 0; pass < 6; pass++)
            tank = Mixed(tank);
        Assert.InRange(tank[3] - tank[0], double.NegativeInfinity, 0.01);
    }

    private static double[] Mixed(double[] layers)
    {
        var loop = new LoopBlock<Lane1> { T1 = Lane1.Of(layers[0]), T2 = Lane1.Of(layers[1]), T3 = Lane1.Of(layers[2]), T4 = Lane1.Of(layers[3]) };
        loop.Mix();
        return [Pack.At(loop.T1, 0), Pack.At(loop.T2, 0), Pack.At(loop.T3, 0), Pack.At(loop.T4, 0)];
    }
}
