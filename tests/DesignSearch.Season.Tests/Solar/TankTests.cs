using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class TankTests
{
    private const double Capacity = 0.3 * 988 * 4180;

    [Theory]
    [InlineData(24, 53.491)]
    [InlineData(72, 42.904)]
    public void Cools(int hours, double expected)
    {
        var loop = TestLoop.At(60, LoopTerms.None with { LayerStore = Capacity / 4, LayerLoss = 0.5 });
        TestLoop.Run(ref loop, hours * 120, 10);
        Validation.Equal($"tank E1 kernel cool-down {hours} h", "°C", expected, Pack.At(loop.TankMean, 0), 0.01, "analytic, one capacity; kernel at 30 s", "LoopBlock");
    }

    [Fact]
    public void Charges()
    {
        // 2 kW brought in at the bottom; they rise through all layers.
        var loop = TestLoop.At(10, LoopTerms.None with { LayerStore = 200 * 4180 / 4.0, LayerLoss = 2 });
        TestLoop.Run(ref loop, 5 * 120, 10, releaseW: -2000);
        Validation.Equal("tank E1 kernel charge 5 h", "°C", 49.558, Pack.At(loop.TankMean, 0), 0.03, "analytic, one capacity; kernel at 30 s", "LoopBlock");
    }
}
