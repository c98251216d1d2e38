using CsCheck;
using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Glass;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;
using Xunit;

namespace DesignSearch.Season.Tests;

/// <summary>What any sound model does, on random layouts; and the plausibility limits that seasons keep.</summary>
public sealed class SenseTests
{
    private const int Tries = 60;

    private static readonly Winter Clear = MadeWinter.Of(30, 10);
    private static readonly Winter Dull = MadeWinter.Of(30, 10, noonWPerM2: 120, skyBelowK: 0);

    private static Outcome Run(Winter winter, Installation layout) => SeasonSimulator.Run(MadeWinter.Forcing(winter), new LayoutCase(layout, MadeWinter.Plane(winter)));

    private static void Helps(Outcome own, Outcome other, string what) => Assert.True(
        other.FrostDegreeHoursKh <= own.FrostDegreeHoursKh + Math.Max(0.5, 0.01 * own.FrostDegreeHoursKh),
        FormattableString.Invariant($"{what}: frost rises from {own.FrostDegreeHoursKh} to {other.FrostDegreeHoursKh} K·h"));

    private static Installation Changed(Installation layout, Func<HouseNumbers, HouseNumbers> change) => layout with { House = change(layout.House) };

    [Fact]
    public void Better_houses_freeze_less() => MadeLayout.Any.Sample(
        layout =>
        {
            var own = Run(Clear, layout);
            Helps(own, Run(Clear, Changed(layout, h => h with { CoverResistanceM2KPerW = h.CoverResistanceM2KPerW + 0.1 })), "thicker cover");
            Helps(own, Run(Clear, Changed(layout, h => h with { LiningResistanceM2KPerW = h.LiningResistanceM2KPerW + 0.1 })), "lining that costs no light");
            Helps(own, Run(Clear, Changed(layout, h => h with { NightCoverResistanceM2KPerW = h.NightCoverResistanceM2KPerW + 0.2 })), "night cover");
            Helps(own, Run(Clear, layout with { Heater = layout.Heater with { PowerW = layout.Heater.PowerW + 500 } }), "bigger stand-by");
        }, iter: Tries);

    /// <summary>Whatever else there is, and whichever of them gives first.</summary>
    [Fact]
    public void A_heat_pump_freezes_less() => MadeLayout.Any.Select(Gen.Double[800, 4000], Gen.Double[3, 16]).Sample(
        (layout, watts, setC) =>
        {
            var own = Run(Clear, layout);
            Helps(own, Run(Clear, layout.With(TestLayout.HeatPump(watts, setC))), "heat pump");
        }, iter: Tries);

    /// <summary>It takes from the day, and must not take from the night.</summary>
    [Fact]
    public void A_day_heat_store_freezes_no_more() => MadeLayout.Any.Select(Gen.Int[2, 12], Gen.Double[14, 22], Gen.Double[3, 8]).Sample(
        (layout, pipes, chargeC, setC) =>
        {
            var own = Run(Clear, layout);
            Helps(own, Run(Clear, layout.With(TestLayout.DayStore(pipes, 300, 25, chargeC, setC))), "day-heat store");
        }, iter: Tries);

    [Fact]
    public void A_warmer_winter_freezes_less() => MadeLayout.Any.Sample(
        layout => Helps(Run(Clear, layout), Run(MadeWinter.Of(30, 10, meanC: 2), layout), "warmer weather"), iter: Tries);

    /// <summary>Under an overcast sky the house is never colder than outside for long, and each leak costs.</summary>
    [Fact]
    public void Fewer_leaks_freeze_less_under_a_dull_sky() => MadeLayout.Any.Sample(
        layout => Helps(Run(Dull, layout), Run(Dull, Changed(layout, h => h with { AirChangesPerHour = h.AirChangesPerHour / 2, AirChangesPerHourPerMPerS = h.AirChangesPerHourPerMPerS / 2 })), "fewer leaks"), iter: Tries);

    /// <summary>
    /// Under a clear sky that cannot be asked of every house: a house without heat of its own is cooled by the sky below the air outside, and its leaks then warm it
    /// (measured: Savage 1980; Sugiyama, Takahashi and Lee 1967). Where it stays warmer than outside in every frost hour, fewer leaks freeze less.
    /// </summary>
    [Fact]
    public void Fewer_leaks_freeze_less_under_a_clear_sky_where_the_house_is_the_warmer_side() => MadeLayout.Any.Sample(
        layout =>
        {
            var colder = false;
            var own = SeasonSimulator.Run(MadeWinter.Forcing(Clear), new LayoutCase(layout, MadeWinter.Plane(Clear)), r => colder |= r.Frost && r.AirMeanC < r.OutsideC);
            if (!colder)
                Helps(own, Run(Clear, Changed(layout, h => h with { AirChangesPerHour = h.AirChangesPerHour / 2 })), "fewer leaks");
        }, iter: Tries);

    [Fact]
    public void Without_sun_a_collector_adds_nothing_to_any_layout() => MadeLayout.Any.Sample(
        layout =>
        {
            var dark = MadeWinter.Of(15, 5, meanC: -4, noonWPerM2: 0);
            var (with, without) = (Run(dark, layout), Run(dark, layout with { Collector = CollectorNumbers.None, PipeRun = PipeRunNumbers.None }));
            Assert.Equal(0, with.CollectorYieldKwh);
            Assert.Equal(0, with.PumpHours);
            Assert.Equal(without.FrostDegreeHoursKh, with.FrostDegreeHoursKh);
        }, iter: Tries);

    /// <summary>The same weather half a year later on the other half of the globe, everything facing the equator: the same result.</summary>
    [Fact]
    public void The_equator_is_a_mirror()
    {
        var glazing = new Glazing(2, 0.75);
        double[] Result(double latitude)
        {
            var winter = TestWinter.Make(30, 10, latitude, seed: 4);
            var planes = new PlaneCache(50_000_000);
            var equator = TestWinter.Equator(winter);
            var sun = HouseSun.TransmittedW(
                winter,
                [.. new Facet[] { new(12, 90, equator), new(12, 40, equator), new(12, 40, (equator + 180) % 360), new(6, 90, 90), new(6, 90, 270) }.Select(f => new Pane(f, glazing))],
                (w, mount, _) => planes.Get(w, mount));
            var outcome = SeasonSimulator.Run(WinterForcing.Prepare(winter, sun, SeasonAssumptions.Default), new LayoutCase(TestLayout.Solar(5) with { Heater = new HeaterNumbers(300, 4, 1) }, planes.Get(winter, Mount.FixedAt(60, equator))));
            // From −10 °C, so that a share of it means something.
            return [outcome.FrostDegreeHoursKh, outcome.StandbyKwh, outcome.CollectorYieldKwh, outcome.LowestAirC + 10];
        }

        var (north, south) = (Result(44), Result(-44));
        // The made weather's day of the year differs by half a day between the halves: 132 + 183 = 315.
        for (var i = 0; i < north.Length; i++)
            Assert.True(south[i] / north[i] is > 0.98 and < 1.02, $"{i} {south[i]} {north[i]}");
    }

    /// <summary>No hour of any layout leaves what physics allows, and nothing is ever not a number.</summary>
    [Fact]
    public void Temperatures_stay_between_the_extremes() => MadeLayout.Any.Sample(
        layout =>
        {
            var coldest = Math.Min(Clear.SkyC.Min(), Math.Min(Clear.AirC.Min(), 0));
            var plane = MadeWinter.Plane(Clear);
            // Where absorbed sun and loss meet, at the sun of any hour and the warmest air; without wind.
            var most = plane.BeamWPerM2.Select((b, h) => b + plane.SkyWPerM2[h] + plane.GroundWPerM2[h]).Max();
            var hottest = Clear.AirC.Max() + Stagnation.RiseK(MadeLayout.Collector.Eta0Beam * most, MadeLayout.Collector.A1WPerM2K, MadeLayout.Collector.A2WPerM2K2);
            var outcome = SeasonSimulator.Run(MadeWinter.Forcing(Clear), new LayoutCase(layout, plane), r =>
            {
                Assert.True(double.IsFinite(r.AirMeanC + r.FloorC + r.PumpShare + r.ReleaseW + r.HeaterW + r.HouseSunW));
                Assert.InRange(r.AirMeanC, coldest, 60);
                Assert.InRange(r.FloorC, coldest, 60);
                Assert.InRange(r.PumpShare, 0, 1 + 1e-9);
                Assert.InRange(r.HeaterW, 0, layout.Heater.PowerW + 1e-6);
                if (!double.IsNaN(r.TankTopC))
                {
                    Assert.InRange(r.TankTopC, coldest, Math.Max(hottest, 60));
                    // What is left in the pipe comes in cold at the top when the pump starts: a step puts at most that share of a layer upside down. One pass of mixing
                    // leaves up to 3/8 of it (MixingTests), so step upon step no more than 0.6 times what one step makes.
                    var plug = layout.Collector.FlowKgPerS * SeasonSimulator.UsualStepSeconds;
                    var left = 0.6 * plug / (plug + layout.Tank.WaterKg / 4) * Math.Max(0, r.TankBottomC - coldest);
                    Assert.True(r.TankTopC >= r.TankBottomC - Math.Max(0.1, left), FormattableString.Invariant($"tank {r.TankTopC} over {r.TankBottomC}"));
                }

                // The loss at the mean of inlet and outlet needs a real flow; the checks refuse less than 0.006 kg/(s·m²).
                if (!double.IsNaN(r.CollectorC) && layout.Collector.FlowKgPerS > 0.005 * layout.Collector.AreaM2)
                    Assert.InRange(r.CollectorC, coldest, hottest + 0.01);
                if (!double.IsNaN(r.BarrelsC))
                    Assert.InRange(r.BarrelsC, coldest, 60);
            });
            Assert.True(double.IsFinite(outcome.FrostDegreeHoursKh + outcome.StandbyKwh + outcome.CollectorYieldKwh + outcome.PumpHours + outcome.PumpKwh + outcome.ReleasedKwh + outcome.Books.ThroughputKwh));
            Assert.InRange(outcome.BalanceResidual, 0, 1e-9);
        }, iter: Tries);

    /// <summary>A plate of a hand's size on long pipes brings home what warm outside air gives them: that comes on top of the sun.</summary>
    [Fact]
    public void Yield_stays_within_the_light_on_the_plane_times_peak_efficiency() => MadeLayout.Any.Sample(
        layout =>
        {
            var plane = MadeWinter.Plane(Clear);
            var light = Enumerable.Range(Clear.WarmUpHours, Clear.SeasonHours).Sum(h => plane.BeamWPerM2[h] + plane.SkyWPerM2[h] + plane.GroundWPerM2[h]) / 1000;
            var most = light * layout.Collector.AreaM2 * layout.Collector.Eta0Beam;
            var outcome = Run(Clear, layout);
            Assert.InRange(outcome.Books.Of(SolarFlows.Sun), 0, most + 1e-9);
            var fromAir = Math.Max(0, -outcome.Books.Of(SolarFlows.CollectorLoss) - outcome.Books.Of(SolarFlows.PipeLoss));
            Assert.InRange(outcome.CollectorYieldKwh, double.NegativeInfinity, most + fromAir + 0.1);
        }, iter: Tries);

    /// <summary>A measure on the skin saves no more than the loss it takes away, over the degree-hours below the set point; a tenth more for the sky.</summary>
    [Fact]
    public void A_measure_saves_no_more_than_the_loss_it_takes_away() => Gen.Double[0, 0.3].Select(Gen.Double[0.05, 0.6], Gen.Double[0.2, 1.5]).Sample(
        (sheet, more, leak) =>
        {
            const double Set = 4;
            var winter = MadeWinter.Of(30, 10, meanC: -3, noonWPerM2: 120, skyBelowK: 5);
            var kelvinHours = winter.AirC.Skip(winter.WarmUpHours).Sum(t => Math.Max(0, Set - t)) / 1000;
            var house = MadeLayout.House with { CoverResistanceM2KPerW = sheet, AirChangesPerHour = leak };
            double Heat(HouseNumbers h) => Run(winter, MadeLayout.Bare with { House = h, Heater = new HeaterNumbers(1e5, Set, 1) }).StandbyKwh;
            var own = Heat(house);
            foreach (var better in new[] { house with { CoverResistanceM2KPerW = sheet + more }, house with { AirChangesPerHour = leak / 2 } })
            {
                var least = HouseLoss.CoefficientWPerK(house, 2) - HouseLoss.CoefficientWPerK(better, 2);
                Assert.InRange(own - Heat(better), 0, 1.1 * least * kelvinHours);
            }
        }, iter: 30);
}
