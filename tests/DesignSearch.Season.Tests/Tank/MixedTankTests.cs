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
        var layout = MadeLayout.Bare with { Tank = new(Capacity / 4186, 2, 60) };
        var loop = new LoopBlock(layout, SeasonAssumptions.Default, 30) { TopC = 60, UpperC = 60, LowerC = 60, BottomC = 60 };
        for (var k = 0; k < hours * 120; k++)
            loop.Step(new LoopHour(0, 0, 0), loop.TankLossW(10), 0, 0);
        Validation.Equal($"tank E1 kernel cool-down {hours} h", "°C", expected, loop.MeanC, 0.01, "analytic, one capacity; kernel at 30 s");
    }
}
