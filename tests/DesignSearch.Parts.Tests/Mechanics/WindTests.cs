using DesignSearch.Parts.Mechanics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

/// <summary>Wind on flat plates against worked examples and tables of the code.</summary>
public sealed class WindTests
{
    private const string Example = "a published signboard calculation to EN 1991-1-4, 7.4.3 (5 m by 7 m, lower edge 1.5 m, 33 m/s, terrain I)";

    // z_e = 1.5 + 7/2 = 5 m.
    [Fact]
    public void A_signboard_of_a_published_calculation()
    {
        var pressure = WindForce.PressurePa(33) * WindExposure.Factor(WindTerrain.Flat, 5);
        Validation.Equal("wind W1 peak pressure", "q_p [Pa]", 1611, pressure, 3, Example, "WindExposure.Factor");
        var plate = PlateWind.Of(90, 5, 7, 1.5);
        Assert.Equal((1.8, 1.8, 0), (plate.Up, plate.Down, plate.OffMiddle));
        var force = WindForce.ForceN(pressure, 35, plate.Worst);
        Validation.Equal("wind W1 force", "F_w [kN]", 101.43, force / 1000, 0.002 * 101.43, Example, "WindForce.ForceN");
        Validation.Equal("wind W1 torsion", "moment a quarter of the width off [kN m]", 126.8, WindForce.MomentNm(force, 5) / 1000, 0.002 * 126.8, Example, "WindForce.MomentNm");
        Validation.Equal("wind W1 overturning", "moment at the ground [kN m]", 507, Standing.MomentNm(force, 90, 5, 0, 0) / 1000, 0.002 * 507, Example + ", recomputed", "Standing.MomentNm");
    }

    [Fact]
    public void A_gust_of_forty_metres_a_second_presses_a_kilopascal() =>
        Validation.Equal("wind W1 gust of 1 kPa", "v [m/s]", 40, WindForce.GustMPerS(1000), 1e-9, "EN 1991-1-4, 4.5, 1.25 kg/m3, by hand", "WindForce.GustMPerS");

    // 2 m wide, 1 m high, lower edge 0.5 m, 25 m/s over fields: below 2 m the pressure is that of 2 m.
    [Fact]
    public void A_small_plate_on_a_post()
    {
        const string Source = "EN 1991-1-4, 4.3 to 4.5 and 7.4.3, recomputed by hand: 2 m by 1 m, 25 m/s, terrain II";
        var pressure = WindForce.PressurePa(25) * WindExposure.Factor(WindTerrain.Fields, 1);
        Validation.Equal("wind W1 small pressure", "q_p [Pa]", 556.0, pressure, 0.56, Source, "WindExposure.Factor");
        var force = WindForce.ForceN(pressure, 2, PlateWind.Of(90, 2, 1, 0.5).Worst);
        Validation.Equal("wind W1 small force", "F_w [N]", 2001.7, force, 2, Source, "PlateWind.Of");
        Validation.Equal("wind W1 small upright axis", "moment about an upright axis [N m]", 1000.8, WindForce.MomentNm(force, 2), 1, Source, "WindForce.MomentNm");
        Validation.Equal("wind W1 small level axis", "moment about a level axis at half chord [N m]", 500.4, WindForce.MomentNm(force, 1), 0.5, Source, "WindForce.MomentNm");
        Validation.Equal("wind W1 small ground", "moment at the ground [N m]", 2001.7, Standing.MomentNm(force, 90, 1, 0, 0), 2, Source, "Standing.MomentNm");
    }

    [Theory]
    [InlineData(WindTerrain.Sea, 1, 1.812)]
    [InlineData(WindTerrain.Sea, 3, 2.339)]
    [InlineData(WindTerrain.Flat, 2, 1.878)]
    [InlineData(WindTerrain.Fields, 1, 1.423)]
    [InlineData(WindTerrain.Fields, 5, 1.929)]
    [InlineData(WindTerrain.Suburb, 2, 1.281)]
    [InlineData(WindTerrain.Suburb, 10, 1.709)]
    [InlineData(WindTerrain.Town, 3, 1.176)]
    public void Exposure_of_each_terrain(WindTerrain terrain, double height, double expected) => Validation.Equal(
        FormattableString.Invariant($"wind W1 exposure {terrain} at {height} m"), "c_e [1]", expected, WindExposure.Factor(terrain, height), 0.001 * expected, "EN 1991-1-4, 4.3 to 4.5, table 4.1, recomputed by hand", "WindExposure.Factor");

    [Theory]
    [InlineData(0, 0.2, 0.5, 1.3)]
    [InlineData(10, 0.5, 0.9, 1.4)]
    [InlineData(20, 0.8, 1.3, 1.4)]
    [InlineData(25, 1.0, 1.6, 1.4)]
    [InlineData(30, 1.2, 1.8, 1.4)]
    public void A_roof_of_one_slope(double tilt, double down, double empty, double blocked)
    {
        const string Source = "EN 1991-1-4, 7.3, table 7.6; the same figures for an empty roof stand in BS 6399-2, table 13";
        var at = FormattableString.Invariant($"wind W2 roof at {tilt} deg ");
        Validation.Equal(at + "down", "c_f greatest [1]", down, Monopitch.Down(tilt), 1e-9, Source, "Monopitch.Down");
        Validation.Equal(at + "up, empty", "c_f least, empty [1]", empty, Monopitch.Up(tilt, 0), 1e-9, Source, "Monopitch.Up");
        Validation.Equal(at + "up, blocked", "c_f least, blocked [1]", blocked, Monopitch.Up(tilt, 1), 1e-9, Source, "Monopitch.Up");
        var plate = PlateWind.Of(tilt, 2, 2, 0.6);
        Assert.Equal((down, Math.Max(empty, blocked), 0.25), (plate.Down, plate.Up, plate.OffMiddle));
    }

    [Fact]
    public void A_half_blocked_roof_lies_between()
    {
        const string Source = "a published test of an open program for EN 1991-1-4, table 7.6: 20 deg, blockage 0.5";
        Validation.Equal("wind W2 half blocked down", "c_f greatest [1]", 0.8, Monopitch.Down(20), 1e-9, Source, "Monopitch.Down");
        Validation.Equal("wind W2 half blocked up", "c_f least [1]", 1.35, Monopitch.Up(20, 0.5), 1e-9, Source, "Monopitch.Up");
        Assert.Equal(1.1, Monopitch.Down(27.5), 1e-9);
    }

    // Zones A and B over as long a stretch of the end as the plate is high: 0.3 A + 0.7 B.
    [Theory]
    [InlineData(3, 1.67)]
    [InlineData(4, 1.90)]
    [InlineData(5, 2.13)]
    [InlineData(10, 2.49)]
    [InlineData(40, 2.49)]
    public void A_low_wide_plate_is_a_wall(double ratio, double expected)
    {
        Validation.Equal(FormattableString.Invariant($"wind W1 wall {ratio} times as long as high"), "coefficient of its end [1]", expected, LowWall.End(2 * ratio, 2), 1e-9, "EN 1991-1-4, 7.4.1, table 7.9, zones A and B; the sum by hand", "LowWall.End");
        Assert.Equal(Math.Max(1.8, expected), PlateWind.Of(90, 2 * ratio, 2, 0.4).Up, 1e-9);
        Assert.Equal(1.8, PlateWind.Of(90, 2 * ratio, 2, 0.5).Up, 1e-9);
    }

    // No jump in lift where the table ends; the lever comes to half height with the plate's becoming upright.
    [Fact]
    public void A_steeper_plate_is_a_signboard()
    {
        Assert.Equal(PlateWind.Of(30, 2, 2, 0.6).Up, PlateWind.Of(30.01, 2, 2, 0.6).Up, 0.001);
        Assert.Equal(PlateWind.Of(30, 2, 2, 0.6).OffMiddle, PlateWind.Of(30.01, 2, 2, 0.6).OffMiddle, 0.001);
        Assert.Equal(0.125, PlateWind.Of(60, 2, 2, 0.6).OffMiddle, 1e-9);
    }
}
