using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class MixedTankTests
{
    private const double Capacity = 0.3 * 988 * 4180;

    [Theory]
    [InlineData(24, 53.491)]
    [InlineData(72, 42.904)]
    public void Cools(double hours, double expected) =>
        Validation.Equal($"tank E1 cool-down {hours} h", "°C", expected, MixedTank.CoolDownC(60, 10, Capacity, 2, hours * 3600), 0.01, "analytic, one capacity");

    [Fact]
    public void Charges() =>
        Validation.Equal("tank E1 charge 5 h", "°C", 49.558, MixedTank.CoolDownC(10, 10, 200 * 4180, 8, 5 * 3600, 2000), 0.01, "analytic, one capacity");

    [Theory]
    [InlineData(24, 53.491)]
    [InlineData(72, 42.904)]
    public void The_kernel_tank_cools_alike(int hours, double expected)
    {
        var loop = new LoopBlock<Lane1>([new LoopCoefficients { HasTank = true, LayerStore = Capacity / 4, LayerLoss = 0.5 }], 30, 60, 20);
        loop.Hour(new HourForcing(10, 0, 0, 0, 0, 1200, true), Lane1.Of(0), Lane1.Of(0), Lane1.Of(0));
        for (var k = 0; k < hours * 120; k++)
        {
            loop.StandingLoss(Lane1.Of(10));
            loop.Circulate();
            loop.Settle(Lane1.Of(0), Lane1.Of(0));
            loop.Mix();
        }

        Validation.Equal($"tank E1 kernel cool-down {hours} h", "°C", expected, Pack.At(loop.TankMean, 0), 0.01, "analytic, one capacity; kernel at 30 s");
    }

    [Theory]
    [InlineData("A+", 300, 36.4)]
    [InlineData("A", 300, 50.1)]
    [InlineData("B", 300, 70.1)]
    [InlineData("C", 300, 98.2)]
    [InlineData("D", 300, 122.1)]
    [InlineData("E", 300, 159.8)]
    [InlineData("F", 500, 231.1)]
    public void Standing_loss_by_class(string energyClass, double litres, double expected) =>
        Validation.Equal($"tank E2 class {energyClass} {litres} L", "W", expected, TankLoss.StandingW(energyClass, litres), 0.1, "Commission Delegated Regulation (EU) 812/2013, Annex II");

    [Fact]
    public void Loss_per_kelvin_is_that_at_the_test_difference() =>
        Validation.Equal("tank E2 class C 300 L per kelvin", "W/K", 2.18, TankLoss.WPerK("C", 300), 0.005, "Commission Delegated Regulation (EU) 812/2013, Annex II; 45 K after EN 12897 (from memory)");
}
