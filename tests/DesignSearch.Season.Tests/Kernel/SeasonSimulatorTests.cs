using CsCheck;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class SeasonSimulatorTests
{
    private static readonly Winter Winter = MadeWinter.Of(40, 10);
    private static readonly WinterForcing Forcing = MadeWinter.Forcing(Winter);
    private static readonly PlaneIrradiance Plane = MadeWinter.Plane(Winter);

    private static Outcome Run(Installation layout, double step = 300) => SeasonSimulator.Run(Forcing, new LayoutCase(layout, Plane), null, step);

    [Fact]
    public void Energy_closes_on_any_layout() => MadeLayout.Any.Sample(
        layout =>
        {
            var outcome = Run(layout);
            Assert.InRange(outcome.BalanceResidual, 0, 1e-9);
            Assert.InRange(outcome.LowestAirC, -40, 40);
            Assert.True(double.IsNaN(outcome.TankHighestC) || outcome.TankHighestC < 150);
        }, iter: 200);

    [Fact]
    public void Halving_the_step_changes_little() => MadeLayout.Any.Sample(
        layout =>
        {
            var (whole, half) = (Run(layout), Run(layout, 150));
            Assert.True(
                Math.Abs(whole.FrostDegreeHoursKh - half.FrostDegreeHoursKh) <= Math.Max(0.5, 0.01 * half.FrostDegreeHoursKh),
                FormattableString.Invariant($"frost {whole.FrostDegreeHoursKh} against {half.FrostDegreeHoursKh}"));
            Assert.True(
                Math.Abs(whole.StandbyKwh - half.StandbyKwh) <= Math.Max(0.5, 0.01 * half.StandbyKwh),
                FormattableString.Invariant($"stand-by {whole.StandbyKwh} against {half.StandbyKwh}"));
        }, iter: 30);

    [Fact]
    public void Place_size_of_block_and_thread_change_no_bit()
    {
        var cases = new[] { 2.0, 4, 0, 8, 3 }.Select(a => new LayoutCase(MadeLayout.Full with { Collector = MadeLayout.Collector with { AreaM2 = a } }, Plane)).ToArray();
        var block = new Outcome[5];
        SeasonSimulator.Run(Forcing, cases, block);
        var back = new Outcome[5];
        SeasonSimulator.Run(Forcing, cases.Reverse().ToArray(), back);
        var alone = new Outcome[5];
        Parallel.For(0, 5, i => alone[i] = SeasonSimulator.Run(Forcing, cases[i]));
        Assert.Equal(block, back.Reverse());
        Assert.Equal(block, alone);
    }

    [Fact]
    public void Night_cover_and_heater_help_in_turn_and_the_heater_stays_within_the_loss()
    {
        var bare = Run(MadeLayout.Bare);
        var covered = Run(MadeLayout.Bare with { House = MadeLayout.House with { NightCoverResistanceM2KPerW = 0.3 } });
        var heater = new HeaterNumbers(2000, 4, 1);
        var heated = Run(MadeLayout.Bare with { House = MadeLayout.House with { NightCoverResistanceM2KPerW = 0.3 }, Heater = heater });
        Assert.True(bare.FrostDegreeHoursKh > covered.FrostDegreeHoursKh && covered.FrostDegreeHoursKh > heated.FrostDegreeHoursKh);
        Assert.True(bare.LowestAirC < covered.LowestAirC && covered.LowestAirC < heated.LowestAirC);

        var bareHeated = Run(MadeLayout.Bare with { Heater = heater });
        var bound = Enumerable.Range(Winter.WarmUpHours, Winter.SeasonHours)
            .Sum(h => HouseLoss.CoefficientWPerK(MadeLayout.House, Winter.WindMPerS[h]) * Math.Max(0, 4 - Winter.AirC[h])) / 1000;
        Assert.InRange(bareHeated.StandbyKwh, 1, 1.1 * bound);
    }

    [Fact]
    public void A_turn_swapped_east_for_west_loses_yield()
    {
        double Yield(double turn) => SeasonSimulator.Run(Forcing, new LayoutCase(MadeLayout.Full, MadeWinter.Plane(Winter, turn))).CollectorYieldKwh;
        Assert.True(Yield(1) > Yield(0) && Yield(0) > Yield(-1) && Yield(-1) > 0);
    }

    [Fact]
    public void Twice_the_area_gives_more_but_less_than_twice()
    {
        double Yield(double area) => Run(MadeLayout.Full with { PipeRun = PipeRunNumbers.None, Collector = MadeLayout.Collector with { AreaM2 = area, FlowKgPerS = 0.02 * area } }).CollectorYieldKwh;
        Assert.True(Yield(4) > Yield(2));
        Assert.True(Yield(4) < 2 * Yield(2));
    }

    [Fact]
    public void Area_zero_is_no_collector_to_the_last_bit() => Assert.Equal(
        Run(MadeLayout.Full with { Collector = CollectorNumbers.None, PipeRun = PipeRunNumbers.None }),
        Run(MadeLayout.Full with { Collector = MadeLayout.Collector with { AreaM2 = 0 } }));

    [Fact]
    public void Without_sun_a_collector_adds_nothing()
    {
        var dark = MadeWinter.Of(20, 5, meanC: -8, noonWPerM2: 0);
        var outcome = SeasonSimulator.Run(MadeWinter.Forcing(dark), new LayoutCase(MadeLayout.Full, MadeWinter.Plane(dark)));
        Assert.Equal(0, outcome.CollectorYieldKwh);
        Assert.Equal(0, outcome.PumpHours);
    }

    [Fact]
    public void A_heater_strong_enough_leaves_no_frost_hour_at_its_own_limit()
    {
        var outcome = Run(MadeLayout.Bare with { Heater = new(20000, 2, 1) });
        Assert.Equal(0, outcome.FrostHours);
        Assert.Equal(2, outcome.LowestAirC, 6);
    }

    /// <summary>The relay of the one set higher clicks first; set alike, the tank's heat goes before the mains'.</summary>
    [Fact]
    public void A_heater_set_like_the_release_lets_the_tank_go_first()
    {
        Outcome Set(double heaterC) => Run(MadeLayout.Full with { Heater = new(1500, heaterC, 1) });
        var (alike, higher) = (Set(MadeLayout.Release.SetPointC), Set(MadeLayout.Release.SetPointC + 0.001));
        Assert.True(alike.ReleasedKwh > 1.02 * higher.ReleasedKwh, FormattableString.Invariant($"{alike.ReleasedKwh} and {higher.ReleasedKwh} kWh released"));
        Assert.True(alike.StandbyKwh < higher.StandbyKwh);
    }

    [Fact]
    public void What_is_cheap_by_day_and_by_night_is_all_the_current_there_is() => MadeLayout.Any.Sample(
        layout =>
        {
            var whole = layout with { Sources = [CompostHeapTests.Heap(8, 40), new BenchNumbers(3, 5.5, 150, 4)] };
            Outcome Cheap(Func<int, bool> hours) => SeasonSimulator.Run(MadeWinter.Forcing(Winter, isCheapHour: hours), new LayoutCase(whole, Plane));
            var (all, night, day) = (Cheap(_ => true), Cheap(h => h is < 6 or >= 22), Cheap(h => h is >= 6 and < 22));
            Assert.Equal(all.StandbyKwh + all.PumpKwh, all.CheapKwh, 6);
            Assert.Equal(all.ElectricKwh, all.CheapKwh);
            Assert.Equal(all.CheapKwh, night.CheapKwh + day.CheapKwh, 6);
        }, iter: 50);

    [Fact]
    public void Hours_are_those_of_the_outcome()
    {
        var rows = new List<HourRow>();
        var outcome = SeasonSimulator.Run(Forcing, new LayoutCase(MadeLayout.Full, Plane), rows.Add);
        var counted = rows.Skip(Winter.WarmUpHours).ToList();
        Assert.Equal(Winter.Hours, rows.Count);
        Assert.Equal(outcome.FrostHours, counted.Count(r => r.Frost));
        Assert.Equal(outcome.LowestAirC, counted.Min(r => r.AirMeanC));
        Assert.Equal(outcome.StandbyKwh, counted.Sum(r => r.HeaterW) / 1000, 6);
        Assert.Equal(outcome.PumpHours, counted.Sum(r => r.PumpShare), 6);
    }

    [Fact]
    public void A_run_allocates_only_its_outcome()
    {
        var layout = new LayoutCase(MadeLayout.Full, Plane);
        SeasonSimulator.Run(Forcing, layout);
        var before = GC.GetAllocatedBytesForCurrentThread();
        SeasonSimulator.Run(Forcing, layout);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1000);
    }
}
