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
