using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Compost;
using DesignSearch.Season.Kernel;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class CompostHeapTests
{
    private static readonly Winter Winter = MadeWinter.Of(150, 30, meanC: -1);
    private static readonly WinterForcing Forcing = MadeWinter.Forcing(Winter);

    /// <summary>Chips and manure: 140 kg of degradable solids a cubic metre.</summary>
    public static CompostNumbers Heap(double volumeM3, double coilWPerK = 0, double restBelowC = 40, double ratePerDay = 0.003) => new(
        volumeM3, CompostHeap.LossWPerK(volumeM3, 0.15, SeasonAssumptions.Default), 140 * volumeM3, ratePerDay, 19e6, coilWPerK, 10, 4, restBelowC);

    private static Installation House(CompostNumbers heap) => MadeLayout.Bare.With(heap);

    private static Outcome Run(CompostNumbers heap, WinterForcing? forcing = null, Action<HourRow>? hourly = null, double step = 300) =>
        SeasonSimulator.Run(forcing ?? Forcing, new LayoutCase(House(heap), null), hourly, step);

    [Theory]
    [InlineData(5, 0.3834)]
    [InlineData(10, 0.5277)]
    [InlineData(20, 0.9995)]
    [InlineData(30, 1.8916)]
    [InlineData(40, 3.5683)]
    [InlineData(50, 6.6546)]
    [InlineData(55, 8.9793)]
    [InlineData(60, 11.891)]
    [InlineData(65, 15.151)]
    [InlineData(70, 17.699)]
    public void Rate_factor_is_that_of_the_handbook(double coreC, double expected) => Validation.Equal(
        FormattableString.Invariant($"compost rate factor {coreC:00} °C"), "rate over that at 20 °C", expected, CompostHeap.RateFactor(coreC), 0.0002 * expected, "Haug 1993, 1.066^(T-20) - 1.21^(T-60), in secondary texts", "CompostHeap.RateFactor");

    [Fact]
    public void Solids_decay_and_heat_as_the_closed_form()
    {
        // Degradable mass 382.5 kg, 0.01 1/d held constant by the cap of the factor, 20 MJ/kg: power after 0, 30, 60, 120 days.
        var assumptions = SeasonAssumptions.Default.With(CompostAssumptions.RateFactorMost, 1).With(CompostAssumptions.SteamWPerM3K, 0);
        var steady = MadeWinter.Of(121, 0, meanC: 35, swingK: 0);
        var forcing = MadeWinter.Forcing(steady, assumptions);
        var heap = new CompostNumbers(5, 1000, 382.5, 0.01, 20e6, 0, 0, 4, 0);
        var whole = Run(heap, forcing);
        Assert.InRange(whole.Of(CompostFlows.SolidsLeft), Math.Exp(-1.21) * 0.999, Math.Exp(-1.21) * 1.001);
        var hot = whole.Books.Of(CompostFlows.Rotting) * 3.6e6 / 1e9;
        Validation.Equal("compost heat 121 d", "heat of 382.5 kg at 0.01 1/d and 20 MJ/kg [GJ]", 7.65 * (1 - Math.Exp(-1.21)), hot, 0.001 * 5.3, "analytic, first-order decay", "CompostBlock");
    }

    [Fact]
    public void A_heap_that_is_built_later_gives_nothing_before_and_more_of_it_after()
    {
        const int Days = 60;
        double Drawn(double builtDays, Func<int, bool> counts)
        {
            var (sum, hour) = (0.0, -24 * 30);
            var outcome = Run(Heap(12, 50, 40) with { BuiltDays = builtDays }, null, row => sum += counts(hour++) ? row.More[CompostFlows.DrawW] : 0);
            Assert.InRange(outcome.BalanceResidual, 0, 1e-9);
            return sum;
        }

        Assert.Equal(0, Drawn(Days, h => h < 24 * Days));
        Assert.True(Drawn(Days, h => h >= 24 * Days) > 1.05 * Drawn(0, h => h >= 24 * Days));
        Assert.Equal(Drawn(0, _ => true), Drawn(-5, _ => true));
    }

    [Fact]
    public void A_woody_heap_lasts_the_winter_and_stays_within_what_heaps_give()
    {
        var heap = Heap(12, 50, 40, 0.0015);
        var outcome = Run(heap);
        Assert.InRange(outcome.Books.Of(CompostFlows.Draw) * 1000 / outcome.SeasonHours / 12, 10, 150);
        Assert.InRange(outcome.Of(CompostFlows.SolidsLeft), 0.2, 0.8);
        Assert.InRange(outcome.BalanceResidual, 0, 1e-9);
        Assert.True(outcome.FrostDegreeHoursKh < Run(heap with { VolumeM3 = 0 }).FrostDegreeHoursKh);
        Assert.Equal(outcome.PumpKwh, outcome.Of(CompostFlows.PumpHours) * 10 / 1000, 9);
    }

    [Fact]
    public void Too_much_coil_without_a_rest_quenches_the_heap_and_the_rest_saves_it()
    {
        double CoreAt(CompostNumbers heap)
        {
            var rows = new List<HourRow>();
            Run(heap, null, rows.Add);
            return rows.Skip(60 * 24).Take(90 * 24).Average(r => r.More[CompostFlows.Core]);
        }

        var quenched = CoreAt(Heap(6, 200, 0, 0.0015));
        var rested = CoreAt(Heap(6, 200, 40, 0.0015));
        Assert.InRange(quenched, -5, 25);
        // Six cubic metres of slow chips cool even alone in such a winter; with the rest they stay a good deal warmer.
        Assert.InRange(rested, quenched + 4, 60);
    }

    [Fact]
    public void A_fresh_heap_does_not_run_away()
    {
        var rows = new List<HourRow>();
        Run(Heap(20, 0, 40, 0.008), null, rows.Add);
        Assert.InRange(rows.Max(r => r.More[CompostFlows.Core]), 55, 80);
    }

    [Fact]
    public void Bigger_heaps_lose_less_for_their_size_and_a_wrap_helps()
    {
        var a = SeasonAssumptions.Default;
        Assert.True(CompostHeap.LossWPerK(16, 0, a) < 2 * CompostHeap.LossWPerK(8, 0, a));
        Assert.True(CompostHeap.LossWPerK(8, 1.8, a) < 0.6 * CompostHeap.LossWPerK(8, 0, a));
    }

    [Fact]
    public void Coil_and_house_pipe_carry_no_more_than_either_and_than_the_flow()
    {
        // So much flow that the water stays even: two conductances in series.
        Assert.Equal(1 / (1 / 80.0 + 1 / 60.0), CompostHeap.CoilWPerK(80, 60, 1e7), 3);
        Assert.InRange(CompostHeap.CoilWPerK(1e6, 1e6, 100), 99.9, 100);
        Assert.Equal(0, CompostHeap.CoilWPerK(80, 0, 100));
    }

    [Fact]
    public void A_heap_of_no_size_is_none_to_the_last_bit_beside_any_neighbour()
    {
        var none = SeasonSimulator.Run(Forcing, new LayoutCase(MadeLayout.Full, MadeWinter.Plane(Winter)));
        var block = new[] { MadeLayout.Full, MadeLayout.Full.With(Heap(10, 60)), MadeLayout.Full.With(Heap(10, 60) with { VolumeM3 = 0 }) };
        var outcomes = new Outcome[3];
        SeasonSimulator.Run(Forcing, [.. block.Select(i => new LayoutCase(i, MadeWinter.Plane(Winter)))], outcomes);
        Assert.Equal(none, outcomes[0]);
        Assert.Equal(none, outcomes[2]);
        Assert.Equal(SeasonSimulator.Run(Forcing, new LayoutCase(block[1], MadeWinter.Plane(Winter))), outcomes[1]);
    }

    [Fact]
    public void Half_the_step_changes_little()
    {
        var (whole, half) = (Run(Heap(10, 60)), Run(Heap(10, 60), null, null, 150));
        Assert.InRange(Math.Abs(whole.FrostDegreeHoursKh - half.FrostDegreeHoursKh), 0, Math.Max(0.5, 0.01 * half.FrostDegreeHoursKh));
        Assert.InRange(whole.Books.Of(CompostFlows.Draw) / half.Books.Of(CompostFlows.Draw), 0.99, 1.01);
    }
}
