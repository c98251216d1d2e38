using DesignSearch.Climate.Weather;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class HumidityTests
{
    private const string Table = "saturation pressures of the ASHRAE Handbook Fundamentals (table), their ratio";

    [Theory]
    [InlineData(20, 5, 2338.8, 872.6)]
    [InlineData(25, 5, 3169.7, 872.6)]
    [InlineData(25, 20, 3169.7, 2338.8)]
    [InlineData(50, 20, 12351.3, 2338.8)]
    public void Air_of_a_dew_point(double airC, double dewC, double saturationPa, double vapourPa)
    {
        var relative = 100 * vapourPa / saturationPa;
        Validation.Equal($"air humidity at {airC} dew {dewC}", "relative humidity [%]", relative, Humidity.RelativePercent(airC, dewC), 0.005 * relative, Table, "Humidity.RelativePercent");
        Validation.Equal($"air dew point at {airC} dew {dewC}", "°C", dewC, Humidity.DewPointC(airC, relative), 0.1, Table, "Humidity.DewPointC");
    }
}
