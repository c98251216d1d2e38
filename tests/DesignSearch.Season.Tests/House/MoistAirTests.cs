using DesignSearch.Season.House;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class MoistAirTests
{
    [Theory]
    [InlineData(-20, 103.24)]
    [InlineData(-10, 259.90)]
    [InlineData(-5, 401.74)]
    [InlineData(5, 872.6)]
    [InlineData(20, 2338.8)]
    [InlineData(25, 3169.7)]
    [InlineData(50, 12351.3)]
    public void Saturation_pressure(double airC, double expected) =>
        Validation.Equal($"moist F7 saturation at {airC}", "Pa", expected, MoistAir.SaturationPa(airC), 0.0003 * expected, "ASHRAE Handbook Fundamentals (table)");

    [Theory]
    [InlineData(-20, 0.0006373)]
    [InlineData(-5, 0.0024863)]
    [InlineData(5, 0.005425)]
    [InlineData(25, 0.020173)]
    public void Saturated_air_holds(double airC, double expected) =>
        Validation.Equal($"moist F7 humidity ratio at {airC}", "kg/kg", expected, MoistAir.SaturatedHumidityRatio(airC), 0.005 * expected, "ASHRAE Handbook Fundamentals (table)");

    [Fact]
    public void A_cover_drips()
    {
        var surface = MoistAir.InnerSurfaceC(8, -4, 6.2, 8);
        Validation.Equal("moist F7 inner surface", "°C", -1.30, surface, 0.01, "steady conduction, analytic");
        Validation.Equal("moist F7 dripping humidity", "", 0.512, MoistAir.DrippingHumidity(8, surface), 0.001, "steady conduction with Hyland and Wexler 1983");
    }
}
