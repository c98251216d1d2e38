using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Glass;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>Snow on the panes of a house that is on a northern slope of no place that is known.</summary>
public sealed class SnowOnHouseTests
{
    private static readonly Glazing Sheet = new(2, 0.7);
    private static readonly Winter Cold = TestWinter.Make(20, 5, 58, seed: 9);
    private static readonly Pane Roof = new(new Facet(10, 35, 150), Sheet);
    private static readonly Pane Wall = new(new Facet(6, 90, 150), Sheet);

    // It snows every day: a tenth comes through the roof, all through the wall.
    [Fact]
    public void A_roof_under_snow_lets_a_share_through_and_a_wall_all()
    {
        var snowy = Cold with { Snow = new([.. Enumerable.Repeat(true, Cold.Hours / 24)], IsBrushed: true) };
        var (roof, wall) = (Sun(Cold, [Roof]), Sun(Cold, [Wall]));
        var under = Sun(snowy, [Roof, Wall], 0.1);
        Assert.True(roof.Sum() > 0 && wall.Sum() > 0);
        for (var h = 0; h < under.Length; h++)
            Assert.Equal((0.1 * roof[h]) + wall[h], under[h], 1e-9);
        // From 60° on nothing lies (EN 1991-1-3).
        var (steep, flatter) = (new Pane(new Facet(1, 60, 150), Sheet), new Pane(new Facet(1, 59, 150), Sheet));
        Assert.Equal(Sun(Cold, [steep]), Sun(snowy, [steep]));
        Assert.All(Sun(snowy, [flatter]), w => Assert.Equal(0, w));
    }

    // One day of snow, then frost in the sun: it slides off the slope, and stays on the hoop.
    [Fact]
    public void A_slope_sheds_what_a_hoop_holds()
    {
        var frost = Cold with { AirC = [.. Enumerable.Repeat(-0.2, Cold.Hours)] };
        var snowy = frost with { Snow = new([.. Enumerable.Range(0, Cold.Hours / 24).Select(d => d == 6)], IsBrushed: false) };
        var (bare, slope, hoop) = (Sun(frost, [Roof]), Sun(snowy, [Roof]), Sun(snowy, [Roof with { HoldsSnow = true }]));
        Assert.Equal(bare[..(24 * 6)], hoop[..(24 * 6)]);
        Assert.All(hoop[(24 * 6)..], w => Assert.Equal(0, w));
        Assert.Equal(bare[(24 * 12)..], slope[(24 * 12)..]);
        Assert.True(slope.Sum() < bare.Sum() && hoop.Sum() < slope.Sum());
    }

    [Fact]
    public void A_house_and_a_collector_under_snow_keep_their_books_and_freeze_more()
    {
        var snowy = Cold with { Snow = new([.. Enumerable.Range(0, Cold.Hours / 24).Select(d => d % 3 == 0)], IsBrushed: false) };
        Outcome Of(Winter winter)
        {
            var planes = new PlaneCache(50_000_000);
            return SeasonSimulator.Run(
                WinterForcing.Prepare(winter, Sun(winter, [Roof, Wall], 0.1), SeasonAssumptions.Default), new LayoutCase(TestLayout.Solar(5), planes.Get(winter, Mount.FixedAt(55, 150))));
        }

        var (clear, under) = (Of(Cold), Of(snowy));
        Assert.InRange(under.BalanceResidual, 0, 1e-9);
        Assert.True(under.CollectorYieldKwh < clear.CollectorYieldKwh, $"{under.CollectorYieldKwh} {clear.CollectorYieldKwh}");
        Assert.True(under.FrostDegreeHoursKh > clear.FrostDegreeHoursKh, $"{under.FrostDegreeHoursKh} {clear.FrostDegreeHoursKh}");
    }

    // 5 cm of dry snow by the extinctions measured on it, 37 to 97 1/m.
    [Fact]
    public void The_share_that_passes_is_that_of_five_centimetres() => Validation.Within(
        "snow of 5 cm on a cover", "share of the light that passes", Math.Exp(-97 * 0.05), Math.Exp(-37 * 0.05), SeasonAssumptions.Default[HouseAssumptions.SnowLightShare],
        "extinction of dry snow 37 to 97 1/m, measured within a snow cover (abstract of \"Extinction and absorption of solar radiation within a snow cover\")", "HouseAssumptions");

    private static double[] Sun(Winter winter, IReadOnlyList<Pane> panes, double underSnow = 0)
    {
        var planes = new PlaneCache(50_000_000);
        return HouseSun.TransmittedW(winter, panes, (w, mount, _) => planes.Get(w, mount), underSnow);
    }
}
