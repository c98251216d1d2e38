using DesignSearch.Climate.Winters;
using DesignSearch.Season.Barrels;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class PowerCutTests
{
    private static readonly Winter Whole = MadeWinter.Of(20, 5, meanC: -3);

    // Day and night of one day without mains, in the middle of the season.
    private static readonly HourSpan Cut = new(12 * 24, 24);
    private static readonly Winter Broken = MadeWinter.Of(20, 5, meanC: -3, powerCuts: [Cut]);
    private static readonly Installation Plant = MadeLayout.Full with { Heater = new HeaterNumbers(6000, 3, 1) };

    private static Outcome Run(Winter winter, Installation plant, Action<HourRow>? hourly = null) =>
        SeasonSimulator.Run(MadeWinter.Forcing(winter), new LayoutCase(plant, MadeWinter.Plane(winter)), hourly);

    [Fact]
    public void Nothing_runs_without_mains()
    {
        var rows = new List<HourRow>();
        Run(Broken, Plant, rows.Add);
        var dead = rows.Skip(Cut.First).Take(Cut.Count).ToList();
        Assert.All(dead, r => Assert.Equal(0, r.HeaterW + r.PumpShare + r.ReleaseW));
        Assert.Contains(dead, r => r.CollectorSunWPerM2 > 200);
        var whole = new List<HourRow>();
        Run(Whole, Plant, whole.Add);
        var alive = whole.Skip(Cut.First).Take(Cut.Count).ToList();
        Assert.True(alive.Sum(r => r.PumpShare) > 1 && alive.Sum(r => r.HeaterW) > 0);
        Assert.Equal(whole.Take(Cut.First), rows.Take(Cut.First));
    }

    [Fact]
    public void The_cut_is_counted_by_itself_and_the_books_close()
    {
        var rows = new List<HourRow>();
        var (whole, broken) = (Run(Whole, Plant), Run(Broken, Plant, rows.Add));
        var dead = rows.Skip(Cut.First).Take(Cut.Count).ToList();
        Assert.Equal(24, broken.PowerCutHours);
        Assert.Equal(dead.Count(r => r.Frost), broken.PowerCutFrostHours);
        Assert.Equal(dead.Min(r => r.AirMeanC), broken.PowerCutLowestAirC);
        Assert.InRange(broken.PowerCutFrostHours, 1, 24);
        Assert.True(broken.FrostHours >= whole.FrostHours + broken.PowerCutFrostHours - 1);
        Assert.InRange(broken.BalanceResidual, 0, 1e-9);
        Assert.Equal(0, whole.PowerCutHours);
        Assert.True(double.IsNaN(whole.PowerCutLowestAirC));
    }

    [Fact]
    public void Barrels_carry_a_house_through_the_cut_better_than_none()
    {
        var without = Run(Broken, Plant with { Barrels = BarrelNumbers.None, Tank = TankNumbers.None });
        var with = Run(Broken, Plant with { Barrels = new BarrelNumbers(2000, 20, 0.2), Tank = TankNumbers.None });
        Assert.True(with.PowerCutLowestAirC > without.PowerCutLowestAirC + 0.5);
    }
}
