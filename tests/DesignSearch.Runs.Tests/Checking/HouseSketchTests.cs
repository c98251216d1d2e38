using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Tests;
using DesignSearch.Runs.Checking;
using Xunit;

namespace DesignSearch.Runs.Tests;

public sealed class HouseSketchTests
{
    [Fact]
    public void A_house_is_drawn_gable_first_near_enough_to_scale()
    {
        using var small = new SmallScenario();
        Assert.Equal(
            [
                "   .-''-.     ridge 2.7 m",
                ".-'      '-.",
                "|          |  eaves 1.9 m",
                "|          |",
                "|          |",
                "|__________|",
                "3.0 m wide, 5.0 m long",
            ],
            HouseSketch.Of(small.Read().Greenhouse));
    }

    [Fact]
    public void A_lean_to_has_its_wall_on_the_right_and_a_tunnel_bends()
    {
        using var small = new SmallScenario();
        var house = small.Read().Greenhouse;
        Assert.Equal(
            [
                "        /----#  at the wall 2.6 m",
                "|-------     #  front 1.8 m",
                "|            #",
                "|            #",
                "|____________#",
                "3.0 m wide, 5.0 m long",
            ],
            HouseSketch.Of(house with { Shape = HouseShape.LeanTo, EavesM = 1.8, RidgeM = 2.6 }));
        var tunnel = HouseSketch.Of(house with { Shape = HouseShape.Tunnel, WidthM = 4, EavesM = 0.5, RidgeM = 2.5 });
        Assert.Equal("top 2.5 m", tunnel[0].Trim().Split("  ")[^1]);
        Assert.Equal("straight sides 0.5 m", tunnel[^2].Trim().Split("  ")[^1]);
        // Higher in the middle than at its sides, alike on both.
        Assert.True(tunnel[0].IndexOf('-', StringComparison.Ordinal) > tunnel[^2].IndexOf('|', StringComparison.Ordinal) + 3, string.Join('\n', tunnel));
    }

    [Theory]
    [InlineData(HouseShape.LeanTo, 1, 0.3, 10)]
    [InlineData(HouseShape.LeanTo, 20, 6, 6.1)]
    [InlineData(HouseShape.Tunnel, 20, 0, 10)]
    [InlineData(HouseShape.Tunnel, 2, 2, 3)]
    public void Any_shape_fits(HouseShape shape, double width, double eaves, double ridge)
    {
        using var small = new SmallScenario();
        var lines = HouseSketch.Of(small.Read().Greenhouse with { Shape = shape, WidthM = width, EavesM = eaves, RidgeM = ridge });
        Assert.InRange(lines.Count, 3, 14);
        Assert.All(lines, l => Assert.InRange(l.Length, 1, 70));
    }

    [Theory]
    [InlineData(1, 0.3, 10)]
    [InlineData(20, 6, 6.1)]
    [InlineData(20, 0.3, 10)]
    [InlineData(2, 2, 4)]
    public void Any_house_fits_and_its_lines_are_whole(double width, double eaves, double ridge)
    {
        using var small = new SmallScenario();
        var lines = HouseSketch.Of(small.Read().Greenhouse with { WidthM = width, EavesM = eaves, RidgeM = ridge });
        Assert.InRange(lines.Count, 3, 14);
        var wide = lines[^2].LastIndexOf('|') + 1;
        Assert.InRange(wide, 4, 40);
        Assert.All(lines.SkipLast(1), l => Assert.True(l.Length >= wide / 2, l));
    }
}
