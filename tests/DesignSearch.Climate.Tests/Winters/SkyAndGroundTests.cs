using DesignSearch.Climate.Winters;
using DesignSearch.Physics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class SkyAndGroundTests
{
    [Fact]
    public void A_clear_sky_is_as_cold_as_the_formula_says()
    {
        // Dew point 0 °C at solar noon: 0.711 − 0.013.
        Validation.Equal("sky clear emissivity", "emissivity at dew point 0 °C, solar noon", 0.698, SkyTemperature.ClearEmissivity(0, 12, 1000), 1e-6, "Berdahl and Martin, Solar Energy 32 (1984), by hand", "SkyTemperature.ClearEmissivity");
        Assert.InRange(-SkyTemperature.UnderCloudC(0, -2, 0, 0, 1000), 18, 26);
        Assert.InRange(-SkyTemperature.UnderCloudC(0, -2, 1, 0, 1000), 2, 6);
        Assert.Equal(-7.5, SkyTemperature.FromLongWaveC(SkyTemperature.LongWave(-7.5)), 1e-9);
        Validation.Equal("sky black body", "long-wave irradiance of a sky of 0 °C [W/m²]", 315.66, SkyTemperature.LongWave(0), 0.01, "Stefan-Boltzmann, analytic", "SkyTemperature.LongWave");
    }

    [Theory]
    [InlineData(0, -5, 0, -23.50)]
    [InlineData(-5, -8, 4, -29.88)]
    [InlineData(5, 0, 6, -17.73)]
    [InlineData(10, 5, 12, -11.62)]
    [InlineData(15, 10, 22, -1.87)]
    public void A_cloudless_sky(double air, double dew, double hour, double expected) =>
        Validation.Equal($"sky clear at {air}", "°C", expected, SkyTemperature.UnderCloudC(air, dew, 0, hour, 1000), 0.01, "Berdahl and Martin 1984", "SkyTemperature.UnderCloudC");

    // By hand: the standard atmosphere has 778.51 hPa at 2 168 m: 1013.25 · (1 − 2168 · 0.0065/288.15)^5.2559 (ISO 2533); 0.00012 · (778.51 − 1000) = −0.02658.
    [Fact]
    public void Above_a_high_place_the_sky_shines_less()
    {
        var pressure = Atmosphere.PressureHPa(2168);
        Validation.Equal("sky pressure at 2168 m", "pressure [hPa]", 778.51, pressure, 0.02, "ISO 2533, by hand", "Atmosphere.PressureHPa");
        Validation.Equal("sky clear emissivity at 2168 m", "emissivity at dew point 0 °C, solar noon", 0.67142, SkyTemperature.ClearEmissivity(0, 12, pressure), 2e-5, "Berdahl and Martin, Solar Energy 32 (1984), pressure term from memory, by hand", "SkyTemperature.ClearEmissivity");
    }

    [Theory]
    [InlineData(20)]
    [InlineData(205)]
    public void The_ground_follows_the_months(double coldest)
    {
        double[] middle = [15.5, 45, 74.5, 105, 135.5, 166, 196.5, 227.5, 258, 288.5, 319, 349.5];
        var ground = GroundFit.FromMonths([.. middle.Select(d => 9 - 7 * Math.Cos(2 * Math.PI * (d - coldest) / 365))]);
        Validation.Equal($"ground coldest {coldest}", "coldest day of a pure wave", coldest, ground.ColdestDay, 1, "analytic", "GroundFit.FromMonths");
        Assert.Equal(9, ground.MeanC, 0.1);
        Assert.Equal(7, ground.AmplitudeK, 0.1);
    }
}
