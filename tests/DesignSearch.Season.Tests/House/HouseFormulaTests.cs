using DesignSearch.Season.House;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class HouseFormulaTests
{
    [Theory]
    [InlineData(6.2, 6884.5)]
    [InlineData(4.0, 4547.0)]
    [InlineData(3.5, 4015.7)]
    public void Steady_loss(double u, double expected) =>
        Validation.Equal($"house F1 loss U {u}", "W", expected, HouseLoss.SteadyW(u, 70.833, 60, 1, 15), 0.001 * expected, "worked example 6 x 4 m gable house, U A + c N V, recomputed");

    [Theory]
    [InlineData(24, 20, 2.0, 0.1, 0, 1.3602)]
    [InlineData(24, 20, 1.5, 0.1, 0, 1.1138)]
    [InlineData(24, 20, 2.0, 0.1, 2.5, 0.3023)]
    [InlineData(100, 40, 2.0, 0.2, 1.0, 0.4245)]
    [InlineData(200, 60, 1.5, 0.3, 0, 0.4950)]
    public void Slab(double area, double edge, double soil, double wall, double floor, double expected) =>
        Validation.Equal($"house F5 slab {area} m² λ {soil} R {floor}", "W/(m²K)", expected, GroundLoss.Iso13370(area, edge, soil, wall, floor), 0.005 * expected, "ISO 13370:2007 section 9.1, recomputed");

    [Theory]
    [InlineData(-5, -30.76)]
    [InlineData(0, -23.95)]
    [InlineData(10, -10.15)]
    [InlineData(20, 3.91)]
    public void Swinbank(double air, double expected) =>
        Validation.Equal($"house F6 Swinbank {air}", "°C", expected, ClearSky.SwinbankC(air), 0.01, "Swinbank 1963");

    [Theory]
    [InlineData(0, -5, 0, -23.50)]
    [InlineData(-5, -8, 4, -29.88)]
    [InlineData(5, 0, 6, -17.73)]
    [InlineData(10, 5, 12, -11.62)]
    [InlineData(15, 10, 22, -1.87)]
    public void Berdahl_and_Martin(double air, double dew, double hour, double expected) =>
        Validation.Equal($"house F6 Berdahl Martin {air}", "°C", expected, ClearSky.BerdahlMartinC(air, dew, hour), 0.01, "Berdahl and Martin 1984");

    [Theory]
    [InlineData(0, 5.7, 2.8)]
    [InlineData(2, 13.3, 8.8)]
    [InlineData(5, 24.7, 17.8)]
    public void Wind(double wind, double mcAdams, double watmuff)
    {
        Validation.Equal($"house F6 McAdams {wind}", "W/(m²K)", mcAdams, OutsideFilm.McAdams(wind), 1e-9, "McAdams 1954");
        Validation.Equal($"house F6 Watmuff {wind}", "W/(m²K)", watmuff, OutsideFilm.Watmuff(wind), 1e-9, "Watmuff et al. 1977");
    }

    [Fact]
    public void A_single_pane_keeps_only_its_glass() =>
        Validation.Equal("house F2 single pane", "m²K/W", 0.004, SheetResistance.FromUValue(1 / (1 / 25.0 + 0.004 + 1 / 7.69)), 1e-9, "EN 673 form, 4 mm glass of 1 W/(m·K)");
}
