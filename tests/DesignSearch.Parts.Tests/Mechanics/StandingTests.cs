using DesignSearch.Parts.Mechanics;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Parts.Tests;

/// <summary>What keeps standing, against worked examples.</summary>
public sealed class StandingTests
{
    private const double M2PerFt2 = 0.09290304;
    private const double MPerFt = 0.3048;

    // Base 5.0 x 1.2 x 0.9 m of 25 kN/m³ under 1021 kN, righting about half of 5 m.
    [Fact]
    public void A_wall_on_a_base_stands()
    {
        const string Source = "a published stability check of a wall to EN 1990, table A1.2(A), EQU";
        var rights = Standing.Rights((1021 + (5 * 1.2 * 0.9 * 25)) * 2.5);
        var tips = Standing.Tips(1057.5, 211);
        Validation.Equal("wind F example A rights", "0.9 of what rights [kN m]", 2601, rights, 0.01 * 2601, Source, "Standing.Rights");
        Validation.Equal("wind F example A tips", "1.5 of the wind, 1.1 of the lean [kN m]", 1818.4, tips, 0.2, Source, "Standing.Tips");
        Assert.True(rights > tips);
    }

    // Sign of 16 ft² at 5 ft, posts of 4.5 ft² at 1.5 ft, 24.7 lb/ft² = 1182.6 Pa; block 2.58 ft square and 2.5 ft deep, 11 993 N with the sign.
    [Fact]
    public void A_sign_is_asked_about_the_foot_of_its_block_and_not_the_ground()
    {
        const string Source = "a city's public file of a sign permit (IBC 1807.2.3), which takes the moment at the ground; about the foot recomputed";
        double At(double depthFt) => Standing.MomentNm(1182.6 * 16 * M2PerFt2, 90, 5 * MPerFt, depthFt * MPerFt, 0)
            + Standing.MomentNm(1182.6 * 4.5 * M2PerFt2, 90, 1.5 * MPerFt, depthFt * MPerFt, 0);
        Validation.Equal("wind F example B at the ground", "moment [N m]", 2905, At(0), 6, Source, "Standing.MomentNm");
        Validation.Equal("wind F example B about the foot", "moment [N m]", 4621, At(2.5), 9, Source, "Standing.MomentNm");
        var rights = Standing.Rights(11993 * 2.58 * MPerFt / 2);
        Validation.Equal("wind F example B rights", "0.9 of what rights [N m]", 4244, rights, 5, Source, "Standing.Rights");
        Validation.Equal("wind F example B tips", "1.5 of the wind about the foot [N m]", 6932, Standing.Tips(At(2.5)), 14, Source, "Standing.Tips");
        // At the ground it would pass by the tenth that tempts.
        Assert.True(rights < Standing.Tips(At(2.5)) && 11993 * 2.58 * MPerFt / 2 > 1.5 * At(0));
    }

    [Fact]
    public void Weight_under_a_small_plate()
    {
        const string Source = "EN 1990, table A1.2(A), EQU, by hand: 1.5 x 2001.7 / (0.9 x 0.75); concrete 24 kN/m3 from memory";
        var weight = Standing.WeightN(2001.7, 0, 1.5);
        Validation.Equal("wind F small plate", "weight on a base of 1.5 m [N]", 4448, weight, 1, Source, "Standing.WeightN");
        Validation.Equal("wind F small plate concrete", "plain concrete [m3]", 0.185, weight / Concrete.NPerM3, 0.0005, Source, "Concrete.NPerM3");
        // A lift of 4 kN alone wants 1.5 · 4000 / 0.9.
        Assert.Equal(6666.7, Standing.WeightN(100, 4000, 1.5), 0.1);
    }

    // 24 000 · 1.2² · 0.8 = 27 648 N; with 1000 N on it, 0.9 · 28 648 · 0.6 = 15 470 N·m.
    [Fact]
    public void The_side_of_a_block_under_a_post()
    {
        Validation.Equal("wind F post block", "side of a block 0.8 m deep under 1000 N that rights 15470 N m [m]", 1.2, Concrete.SideM(15470, 0, 0.8, 1000), 0.001, "statics by hand, EN 1990 EQU", "Concrete.SideM");
        Assert.Equal(1.2, Concrete.SideM(15470 - 1200, 1000, 0.8, 1000), 0.001);
    }

    // Upright and level parts: 1000 N square to a plate at 60°, 1.5 m up, block 0.8 m deep, 0.7 m behind the edge.
    [Fact]
    public void A_lift_adds_and_a_press_takes_off()
    {
        var level = 1000 * Math.Sin(Math.PI / 3) * 2.3;
        Assert.Equal(level + 350, Standing.MomentNm(1000, 60, 1.5, 0.8, 0.7), 1e-9);
        Assert.Equal(level - 350, Standing.MomentNm(-1000, 60, 1.5, 0.8, 0.7), 1e-9);
    }
}
