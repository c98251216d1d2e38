using DesignSearch.Parts.Hydraulics;
using DesignSearch.Physics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

/// <summary>Boiling, frost, growth and inlet head of the water of a loop, against published figures.</summary>
public sealed class ClosedLoopTests
{
    [Theory]
    [InlineData(0, 100)]
    [InlineData(1, 120.5)]
    [InlineData(2, 134)]
    [InlineData(3, 144)]
    public void Water_boils_hotter_under_pressure(double gaugeBar, double expectedC) => Validation.Equal(
        FormattableString.Invariant($"water boiling at {gaugeBar} bar"), "boiling point [C]", expectedC, WaterVapour.BoilsAtC(gaugeBar), 0.5, "steam tables, 1.01 to 4.01 bar absolute", "WaterVapour.BoilsAtC");

    [Fact]
    public void Boiling_point_and_pressure_are_one_curve()
    {
        foreach (var bar in new[] { -0.9, -0.5, 1, 3, 6 })
            Assert.Equal(bar + WaterVapour.SeaLevelBar, WaterVapour.PressureBar(WaterVapour.BoilsAtC(bar)), 1e-6);
    }

    // Head above boiling at sea level with nothing standing over the inlet.
    [Theory]
    [InlineData(20, 10.11)]
    [InlineData(60, 8.44)]
    [InlineData(80, 5.66)]
    [InlineData(90, 3.29)]
    [InlineData(95, 1.77)]
    public void Hot_water_leaves_little_at_a_pumps_inlet(double celsius, double expectedM) => Validation.Equal(
        FormattableString.Invariant($"inlet head at {celsius} C"), "(p_air - p_boil)/(rho g) [m]", expectedM, InletHead.AvailableM(0, celsius, 0, 0), 0.05, "steam tables and density of water, recomputed", "InletHead.AvailableM");

    [Fact]
    public void A_published_suction_sum_comes_out()
    {
        // 90 °C, 1.5 m of friction: (1.013 - 0.70) 10.2 - 1.5 = 1.69 m with the weight of cold water; with that of hot water 1.8.
        Validation.Equal("inlet head at 90 C less 1.5 m", "available NPSH [m]", 1.69, InletHead.AvailableM(0, 90, 0, 1.5), 0.15, "worked example of a public NPSH calculator, weight of cold water", "InletHead.AvailableM");
        Assert.Equal(3, InletHead.AvailableM(0, 60, 3, 0) - InletHead.AvailableM(0, 60, 0, 0), 1e-9);
        // ISO 2533: 795 hPa at 2000 m.
        Validation.Equal("air at 2000 m", "pressure [bar]", 0.795, Atmosphere.PressureHPa(2000) / 1000, 0.001, "ISO 2533", "Atmosphere.PressureHPa");
    }

    // Melinder 2010, by mass.
    [Theory]
    [InlineData(10, -2.9)]
    [InlineData(25, -9.8)]
    [InlineData(30, -12.8)]
    [InlineData(40, -20.6)]
    [InlineData(50, -32.2)]
    [InlineData(40.5, -21)]
    [InlineData(48.4, -30)]
    public void Glycol_freezes_where_the_table_says(double percent, double expectedC) => Validation.Equal(
        FormattableString.Invariant($"propylene glycol {percent} % by mass"), "freezing point [C]", expectedC, PropyleneGlycol.FreezesAtC(percent / 100), 0.4, "Melinder 2010, by mass", "PropyleneGlycol.FreezesAtC");

    [Fact]
    public void No_more_glycol_than_half_and_none_at_all_are_the_ends_of_the_table()
    {
        Assert.Equal(0.5, PropyleneGlycol.MostShare);
        Assert.Equal((0, PropyleneGlycol.FreezesAtC(0.5)), (PropyleneGlycol.FreezesAtC(-0.1), PropyleneGlycol.FreezesAtC(0.6)));
    }

    // Three published sums; each names another final pressure: 0.9 of the valve, the valve itself, half a bar under it.
    [Fact]
    public void Vessels_of_published_examples()
    {
        // 22 L of content, 4.2 L of collectors, 4 m of head, valve of 6 bar: 3 + 2.86 + 4.2 L taken, p0 1.4, pe 5.4 bar: 16.1 L, half as much again 24.1.
        Validation.Equal("vessel solar 22 L", "vessel with half as much again [L]", 24.1, VesselSize.OfSolarLoopL(22, 4.2, 1.4, 5.4), 0.02 * 24.1, "a maker's planning manual for solar loops, worked example", "VesselSize.OfSolarLoopL");
        // 600 L at 0.035: 21 L, p0 1.3 bar, pe 3 bar: 21/(1 - 2.3/4).
        Validation.Equal("vessel heating 600 L", "vessel [L]", 49.4, VesselSize.Litres(600 * 0.035, 1.3, 3), 0.02 * 49.4, "a maker's manual, EN 12828 form, worked example recomputed", "VesselSize.Litres");
        // 300 L at 2 %: 6 L, 3 bar cold, 6 - 0.5 bar: 15.6 L.
        Validation.Equal("vessel store 300 L", "vessel [L]", 15.6, VesselSize.Litres(300 * 0.02, 3, 5.5), 0.02 * 15.6, "a plumbing guide's worked example, EN 12828 form", "VesselSize.Litres");
    }

    [Fact]
    public void A_tank_grows_as_its_density_says()
    {
        // Kell's density: 2.87 % from 10 to 80 °C; 300 L: 8.61 L and 3 L of reserve; p0 0.5, pe 2.5 bar: 11.61 x 3.5/2.
        Validation.Equal("vessel tank 300 L at 80 C", "vessel [L]", 20.3, VesselSize.OfTankL(300, 80, 0.5, 2.5), 0.02 * 20.3, "Kell's density of water, EN 12828 form and reserve, by hand", "VesselSize.OfTankL");
        Assert.Equal((3, 5), (VesselSize.ReserveL(300), VesselSize.ReserveL(1000)));
    }
}
