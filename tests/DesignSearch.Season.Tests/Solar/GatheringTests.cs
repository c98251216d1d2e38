using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Gathering;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>A fan coil that brings the house's surplus by day into the tank.</summary>
public sealed class GatheringTests
{
    private static readonly Winter Sunny = MadeWinter.Of(60, 20, 4, 7, 550, 1.5, 18);

    private static readonly GatheringNumbers Usual = new(MadeLayout.Release.ConductanceWPerK, MadeLayout.Release.ElectricW, 15);

    // House, tank and fan coil, and no collector: what the tank has, the house gave it.
    private static readonly Installation Tank = MadeLayout.Bare with { Tank = new(500, 3, 60), Release = MadeLayout.Release };

    private static (Outcome Outcome, List<HourRow> Rows) Run(Installation plant, Winter? winter = null, double step = 300)
    {
        var rows = new List<HourRow>();
        var outcome = SeasonSimulator.Run(MadeWinter.Forcing(winter ?? Sunny), new LayoutCase(plant, null), rows.Add, step);
        Assert.InRange(outcome.Books.Residual, 0, 1e-9);
        return (outcome, rows);
    }

    [Fact]
    public void Surplus_of_the_day_is_given_back_at_night()
    {
        var (without, with) = (Run(Tank).Outcome, Run(Tank.With(Usual)).Outcome);
        var (gathered, released) = (with.Books.Of(GatheringFlows.Gathered), with.Books.Of(SolarFlows.Release));
        Assert.InRange(gathered, 50, 2000);
        // What goes into the tank comes out by release or wall, or stays there.
        Assert.Equal(gathered, released + with.Books.Of(SolarFlows.TankLoss) + with.Books.Of(SolarFlows.Loop), 1e-9 * gathered);
        Assert.True(released > 0.5 * gathered, $"{released} of {gathered} kWh");
        Assert.InRange(with.FrostDegreeHoursKh, 0, 0.9 * without.FrostDegreeHoursKh);
    }

    [Fact]
    public void The_tank_never_grows_warmer_than_the_air_that_warms_it()
    {
        var (outcome, rows) = Run(Tank.With(Usual));
        Assert.InRange(outcome.TankHighestC, 9, rows.Max(r => r.AirMeanC));
        // It starts three kelvin apart, so a tank near the set point rests.
        Assert.Equal(0, Run((Tank with { Tank = new(10, 0, 60) }).With(Usual with { AboveC = 9 })).Outcome.Books.Of(GatheringFlows.Gathered), 0.5);
    }

    /// <summary>Air held at its set point by a large coil: the vents, which open at 25 °C, have nothing to do.</summary>
    [Fact]
    public void A_large_coil_holds_the_air_at_its_set_point()
    {
        var plant = (Tank with { Tank = new(50_000, 3, 60) }).With(new GatheringNumbers(5000, 0, 15));
        var (_, rows) = Run(plant);
        Assert.InRange(rows.Max(r => r.AirMeanC), 14.9, 15 + 1e-6);
        var (_, free) = Run(Tank);
        Assert.True(free.Max(r => r.AirMeanC) > 18);
    }

    /// <summary>A coil too small to hold the air: heat is conductance times difference, hour by hour, at the ends of the steps.</summary>
    [Fact]
    public void A_small_coil_gives_its_conductance_times_the_difference()
    {
        var (_, rows) = Run((Tank with { Tank = new(50_000, 0, 60) }).With(new GatheringNumbers(20, 0, 15)));
        var hot = rows.Where(r => r.AirMeanC > 18).ToList();
        Assert.True(hot.Count > 20, $"{hot.Count} hours");
        Assert.All(hot, r => Assert.Equal(20 * (r.AirMeanC - r.TankTopC), Gathered(r), 0.02 * 20 * (r.AirMeanC - r.TankTopC)));
    }

    [Fact]
    public void Half_the_step_changes_little()
    {
        var (whole, half) = (Run(Tank.With(Usual)).Outcome, Run(Tank.With(Usual), step: 150).Outcome);
        Assert.InRange(half.FrostDegreeHoursKh / whole.FrostDegreeHoursKh, 0.98, 1.02);
        Assert.InRange(half.Books.Of(GatheringFlows.Gathered) / whole.Books.Of(GatheringFlows.Gathered), 0.98, 1.02);
    }

    [Fact]
    public void Without_mains_nothing_is_gathered()
    {
        var cut = MadeWinter.Of(60, 20, 4, 7, 550, 1.5, 18, [new HourSpan(0, 60 * 24)]);
        var books = Run(Tank.With(Usual), cut).Outcome.Books;
        Assert.Equal((0, 0), (books.Of(GatheringFlows.Gathered), books.Of(GatheringFlows.Fan)));
    }

    [Fact]
    public void Pump_and_fan_take_their_watts_while_they_run()
    {
        var books = Run(Tank.With(Usual)).Outcome.Books;
        var hours = books.Of(GatheringFlows.Fan) / (Usual.FanW / 1000);
        Assert.InRange(hours, 50, 60 * 9);
        Assert.Equal(books.Of(GatheringFlows.Fan), books.Of(GatheringFlows.FanHeat), 1e-9);
        // The whole coil at less than 25 K.
        Assert.InRange(books.Of(GatheringFlows.Gathered) / hours * 1000, 100, 25 * Usual.AirWPerK);
    }

    [Fact]
    public void The_difference_that_starts_it_is_an_assumption()
    {
        double Gathered(double startK) => SeasonSimulator.Run(
            MadeWinter.Forcing(Sunny, SeasonAssumptions.Default.With(GatheringAssumptions.StartK, startK)), new LayoutCase(Tank.With(Usual), null))
            .Books.Of(GatheringFlows.Gathered);
        Assert.True(Gathered(8) < 0.9 * Gathered(3));
    }

    private static double Gathered(HourRow row) => row.More[GatheringFlows.GatheredW];
}
