using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class LaneTests
{
    private static readonly Winter Cold = TestWinter.Make();
    private static readonly WinterForcing Forcing = TestWinter.Forcing(Cold);
    private static readonly PlaneIrradiance South = TestWinter.Plane(Cold, 60);

    private static LayoutCase Case(Installation installation) => new(installation, installation.Collector.AreaM2 > 0 ? South : null);

    private static Outcome Run(Installation installation, double step = 300) => SeasonSimulator.Run(Forcing, Case(installation), null, step);

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(8)]
    public void A_layout_gets_the_same_bits_at_any_width_and_place(int width)
    {
        var random = new Random(5);
        var cases = Enumerable.Range(0, 37).Select(_ => Case(TestLayout.RandomWithSources(random))).ToArray();
        var together = new Outcome[cases.Length];
        SeasonSimulator.Run(Forcing, cases, together, null, 300, width);
        for (var i = 0; i < cases.Length; i++)
            Assert.Equal(SeasonSimulator.Run(Forcing, cases[i]), together[i]);
    }

    [Fact]
    public void Threads_do_not_change_a_bit()
    {
        var random = new Random(6);
        var cases = Enumerable.Range(0, 12).Select(_ => Case(TestLayout.RandomWithSources(random))).ToArray();
        var alone = new Outcome[cases.Length];
        SeasonSimulator.Run(Forcing, cases, alone);
        Parallel.For(0, 4, _ =>
        {
            var again = new Outcome[cases.Length];
            SeasonSimulator.Run(Forcing, cases, again);
            Assert.Equal(alone, again);
        });
    }

    [Fact]
    public void Energy_closes_on_every_run()
    {
        var random = new Random(7);
        var cases = Enumerable.Range(0, 64).Select(_ => Case(TestLayout.RandomWithSources(random))).ToArray();
        var outcomes = new Outcome[cases.Length];
        SeasonSimulator.Run(Forcing, cases, outcomes);
        Assert.All(outcomes, o => Assert.InRange(o.BalanceResidual, 0, 1e-9));
        Assert.All(outcomes, o =>
        {
            // Throughput is all that came in: the gains, what stores gave back, and the ground's gift of single hours, which is no less than its gift on balance.
            var released = o.Books.Stored.Sum(s => Math.Max(0, -s.Kwh));
            var known = o.Books.Flows.Where(f => o.Books.IsOutside(f.Flow.From)).Sum(f => f.Kwh) + released;
            Assert.True(o.Books.ThroughputKwh - known >= Math.Max(0, -o.Books.Of(HouseFlows.Ground)) - 1e-9);
            Assert.All(o.Books.Stored, s => Assert.InRange(
                o.Books.Flows.Sum(f => (f.Flow.To == s.Store.Id ? f.Kwh : 0) - (f.Flow.From == s.Store.Id ? f.Kwh : 0)) - s.Kwh, -1e-9 * o.Books.ThroughputKwh, 1e-9 * o.Books.ThroughputKwh));
        });
    }

    [Fact]
    public void Halving_the_step_changes_little()
    {
        var random = new Random(8);
        var cases = Enumerable.Range(0, 32).Select(_ => Case(TestLayout.RandomWithSources(random))).ToArray();
        var (usual, half) = (new Outcome[cases.Length], new Outcome[cases.Length]);
        SeasonSimulator.Run(Forcing, cases, usual);
        SeasonSimulator.Run(Forcing, cases, half, 150);
        for (var i = 0; i < cases.Length; i++)
        {
            var (a, b) = (usual[i], half[i]);
            Assert.True(Math.Abs(a.FrostDegreeHoursKh - b.FrostDegreeHoursKh) <= Math.Max(0.5, 0.01 * b.FrostDegreeHoursKh), $"layout {i}: {a.FrostDegreeHoursKh} K·h at 300 s, {b.FrostDegreeHoursKh} at 150 s");
            Assert.True(Math.Abs(a.StandbyKwh - b.StandbyKwh) <= Math.Max(0.5, 0.01 * b.StandbyKwh), $"layout {i}: {a.StandbyKwh} kWh at 300 s, {b.StandbyKwh} at 150 s");
        }
    }

    [Fact]
    public void No_area_is_no_collector_to_the_last_bit()
    {
        var without = TestLayout.Solar(4) with { Collector = CollectorNumbers.None, PipeRun = PipeRunNumbers.None };
        var none = SeasonSimulator.Run(Forcing, new LayoutCase(without, null));
        Assert.Equal(none, SeasonSimulator.Run(Forcing, new LayoutCase(TestLayout.Solar(4) with { Collector = TestLayout.Flat(4) with { AreaM2 = 0 } }, South)));
        Assert.Equal(none, SeasonSimulator.Run(Forcing, new LayoutCase(TestLayout.Solar(4) with { Collector = TestLayout.Flat(4) with { AreaM2 = 0 } }, null)));
    }

    [Fact]
    public void Twice_the_collector_gives_more_but_less_than_twice()
    {
        var (one, two) = (Run(TestLayout.Solar(2) with { PipeRun = PipeRunNumbers.None }), Run(TestLayout.Solar(4) with { PipeRun = PipeRunNumbers.None }));
        Assert.InRange(two.CollectorYieldKwh / one.CollectorYieldKwh, 1.05, 1.999);
    }

    [Theory]
    [InlineData(45)]
    [InlineData(-45)]
    public void Morning_east_and_evening_west_beats_the_other_way_round_in_both_hemispheres(double latitude)
    {
        var winter = TestWinter.Make(latitude: latitude);
        var forcing = TestWinter.Forcing(winter);
        var equator = TestWinter.Equator(winter);
        var east = latitude < 0 ? equator + 40 : equator - 40;
        var west = latitude < 0 ? equator - 40 : equator + 40;
        Assert.True(winter.SunAzimuthDeg[(winter.WarmUpHours / 24 + 5) * 24 + 9] is > 0 and < 180, "the morning sun stands in the east");
        double Yield(double before, double after) => SeasonSimulator.Run(forcing, new LayoutCase(TestLayout.Solar(4), TestWinter.Plane(winter, 60, before, after))).CollectorYieldKwh;
        Assert.True(Yield(east, west) > 1.05 * Yield(west, east));
        Assert.True(Yield(east, west) > Yield(equator, equator));
    }

    [Fact]
    public void Without_sun_the_collector_adds_nothing_and_takes_nothing()
    {
        var dark = TestWinter.Make(sun: false);
        var forcing = TestWinter.Forcing(dark);
        var with = SeasonSimulator.Run(forcing, new LayoutCase(TestLayout.Solar(6), TestWinter.Plane(dark, 60)));
        var without = SeasonSimulator.Run(forcing, new LayoutCase(TestLayout.Solar(6) with { Collector = CollectorNumbers.None }, null));
        Assert.Equal(0, with.CollectorYieldKwh);
        Assert.Equal(0, with.PumpHours);
        Assert.Equal(without.FrostDegreeHoursKh, with.FrostDegreeHoursKh);
    }

    [Fact]
    public void Hours_come_from_the_same_kernel_and_add_up()
    {
        var rows = new List<HourRow>();
        var outcome = SeasonSimulator.Run(Forcing, Case(TestLayout.Solar(4)), rows.Add);
        Assert.Equal(Cold.Hours, rows.Count);
        var counted = rows.Where(r => r.Hour >= Cold.WarmUpHours).ToList();
        Assert.Equal(outcome.SeasonHours, counted.Count);
        Assert.Equal(outcome.FrostHours, counted.Count(r => r.Frost));
        Assert.Equal(outcome.FrostDegreeHoursKh, counted.Sum(r => Math.Max(0, 3 - r.AirMeanC)), 9);
        Assert.Equal(outcome.StandbyKwh, counted.Sum(r => r.HeaterW) / 1000, 6);
        Assert.Equal(outcome.LowestAirC, counted.Min(r => r.AirMeanC));
        Assert.Equal(outcome.ColdestHour, counted.MinBy(r => r.AirMeanC).Hour);
        Assert.Equal(outcome.PumpHours, counted.Sum(r => r.PumpShare), 6);
    }

    [Fact]
    public void A_plant_without_any_frost_or_sun_source_never_shows_nothing_that_is_not_a_number()
    {
        var random = new Random(9);
        var cases = Enumerable.Range(0, 64).Select(_ => Case(TestLayout.RandomWithSources(random))).ToArray();
        var outcomes = new Outcome[cases.Length];
        SeasonSimulator.Run(Forcing, cases, outcomes);
        Assert.All(outcomes, o =>
        {
            Assert.True(double.IsFinite(o.FrostDegreeHoursKh + o.StandbyKwh + o.CollectorYieldKwh + o.PumpHours + o.Books.ThroughputKwh));
            Assert.InRange(o.LowestAirC, Cold.SkyC.Min(), 40);
        });
    }

    [Fact]
    public void Nothing_is_allocated_as_the_steps_go_by()
    {
        var layout = new[] { Case(TestLayout.Solar(4)) };
        var outcomes = new Outcome[1];
        SeasonSimulator.Run(Forcing, layout, outcomes);
        var before = GC.GetAllocatedBytesForCurrentThread();
        SeasonSimulator.Run(Forcing, layout, outcomes, 300);
        var few = GC.GetAllocatedBytesForCurrentThread() - before;
        SeasonSimulator.Run(Forcing, layout, outcomes, 60);
        Assert.Equal(few, GC.GetAllocatedBytesForCurrentThread() - before - few);
        Assert.InRange(few, 0, 20_000);
    }

    [Fact]
    public void A_step_that_does_not_divide_the_hour_is_refused() => Assert.Throws<ArgumentException>(() => Run(TestLayout.Bare, 700));
}
