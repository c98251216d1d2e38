using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class TwoCapacityTests
{
    [Theory]
    [InlineData(0.25, 7.5926, 14.9296)]
    [InlineData(0.5, 4.2744, 14.7753)]
    [InlineData(1, 2.0575, 14.3809)]
    [InlineData(3, 0.9946, 12.7337)]
    [InlineData(6, 0.2419, 10.5088)]
    [InlineData(12, -0.9909, 6.8615)]
    [InlineData(24, -2.6548, 1.9384)]
    public void Free_cooling(double hours, double air, double floor) => Check("cooling", 15, 0, hours, air, floor);

    [Theory]
    [InlineData(0.5, 5.3628, 0.1123)]
    [InlineData(1, 6.4713, 0.3095)]
    [InlineData(3, 7.0027, 1.1332)]
    [InlineData(6, 7.3790, 2.2456)]
    [InlineData(12, 7.9954, 4.0692)]
    [InlineData(24, 8.8274, 6.5308)]
    [InlineData(72, 9.8627, 9.5938)]
    public void Heating(double hours, double air, double floor) => Check("heating", 0, 4500, hours, air, floor);

    // The kernel's own house block: air and floor are the two capacities, leakage the loss; the cover hangs on nothing.
    private static void Check(string name, double start, double heatW, double hours, double air, double floor)
    {
        const double step = 1;
        var house = new HouseBlock(new HouseCoefficients { AirJPerK = 0.5e6, FloorJPerK = 8e6, CoverJPerK = 1, AirToFloor = 150 }, step)
        {
            AirC = start,
            FloorC = start,
        };
        var hour = new HouseHour { OutsideC = -5, LeakageWPerK = 300, SunAirW = heatW };
        var control = new HouseControls { VentAboveC = 99, HeaterSetC = -99 };
        for (var k = 0; k < hours * 3600 / step; k++)
            house.Step(hour, control);
        Validation.Equal($"house G2 {name} {hours} h air", "°C", air, house.AirC, 0.01, "analytic, two capacities; implicit house block at 1 s");
        Validation.Equal($"house G2 {name} {hours} h floor", "°C", floor, house.FloorC, 0.01, "analytic, two capacities; implicit house block at 1 s");
    }
}
