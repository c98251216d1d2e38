using DesignSearch.Climate.Winters;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Kernel;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Season.Tests;

public sealed class BenchTests
{
    private static readonly Winter Winter = MadeWinter.Of(90, 20, meanC: -3, swingK: 6);
    private static readonly WinterForcing Forcing = MadeWinter.Forcing(Winter);

    private static Installation House(BenchNumbers bench) => MadeLayout.Bare.With(bench);

    private static Outcome Run(Installation installation, WinterForcing? forcing = null, Action<HourRow>? hourly = null, double step = 300) =>
        SeasonSimulator.Run(forcing ?? Forcing, new LayoutCase(installation, null), hourly, step);

    [Fact]
    public void A_steady_bench_lies_above_its_surroundings_by_power_over_loss()
    {
        // All of the loss to the air: 100 W/m² through 5 W/(m²K) are 20 K, whatever the house does.
        var steady = MadeWinter.Of(20, 10, meanC: 0, swingK: 0, noonWPerM2: 0);
        var forcing = MadeWinter.Forcing(steady, SeasonAssumptions.Default.With(BenchAssumptions.RadiantShare, 0));
        var rows = new List<HourRow>();
        Run(House(new(2, 5, 200, 50)), forcing, rows.Add);
        var last = rows[^1];
        Validation.Equal("heated bench, steady", "kelvin above the house's air at 100 W/m² and 5 W/(m²K)", 20, last.PlantsC - last.AirMeanC, 0.15, "analytic, power over loss", "BenchBlock");
        Assert.Equal(200, last.More[BenchFlows.HeatW], 9);
        Assert.Equal(last.PlantsC, last.More[BenchFlows.Air]);
    }

    [Fact]
    public void A_cooling_bench_follows_the_closed_form()
    {
        // Mains fail: 125 kJ/(m²K) over 5 W/(m²K) is a time constant of 6 h 57 min. After two hours without current a bench of no weight for the house has lost 1 - exp(-2/6.944) of its rise.
        var cut = MadeWinter.Of(20, 10, meanC: 0, swingK: 0, noonWPerM2: 0, windMPerS: 0, powerCuts: [new HourSpan(470, 2)]);
        var forcing = MadeWinter.Forcing(cut, SeasonAssumptions.Default.With(BenchAssumptions.RadiantShare, 0));
        var rows = new List<HourRow>();
        Run(House(new(0.01, 5, 1, 50)), forcing, rows.Add);
        // Hour means: the rise a step integrates to in the second hour of the cut.
        const double tau = 125000 / 5.0 / 3600;
        var mean = tau * (Math.Exp(-1 / tau) - Math.Exp(-2 / tau));
        Validation.Equal("heated bench, cooling", "share of its rise left in the second hour", mean, (rows[471].PlantsC - rows[471].AirMeanC) / (rows[469].PlantsC - rows[469].AirMeanC), 0.006, "analytic, first-order decay", "BenchBlock");
    }

    [Fact]
    public void Energy_closes_and_the_bench_holds_where_its_power_reaches()
    {
        var outcome = Run(House(new(3, 5.5, 300, 5)));
        Assert.InRange(outcome.BalanceResidual, 0, 1e-9);
        Assert.Equal(0, outcome.FrostHours);
        Assert.InRange(outcome.LowestAirC, 4.5, 5.01);
        Assert.InRange(outcome.LowestHouseAirC, -25, -3);
        Assert.Equal(outcome.StandbyKwh, outcome.Books.Of(BenchFlows.Heater));
        Assert.Equal(outcome.StandbyKwh, outcome.Books.Of(BenchFlows.Heat), 12);
    }

    [Fact]
    public void Nothing_of_the_house_changes_but_by_the_bench_s_own_heat()
    {
        var (bare, bench) = (Run(MadeLayout.Bare), Run(House(new(3, 5.5, 300, 5))));
        Assert.Equal(bare.LowestAirC, bare.LowestHouseAirC);
        // 300 W at most in a house that loses some 250 W/K.
        Assert.InRange(bench.LowestHouseAirC - bare.LowestHouseAirC, 0, 300 / 200.0);
    }

    [Fact]
    public void Fleece_alone_gains_what_growers_say_on_the_average_night()
    {
        double Gain(double lets)
        {
            var rows = new List<HourRow>();
            Run(House(new(3, lets, 0, 0)), null, rows.Add);
            // The last hours before dawn, when it matters.
            return rows.Skip(20 * 24).Where(r => r.LocalTime.Hour is >= 4 and <= 6).Average(r => r.PlantsC - r.AirMeanC);
        }

        Validation.Within("single fleece, end of the night", "kelvin above the house's air", 1, 3, Gain(5.5), "common practice, no source: 1 to 3 K", "BenchBlock");
        Validation.Within("double fleece, end of the night", "kelvin above the house's air", 2, 4, Gain(3.3), "common practice, no source: 3 to 4 K; less is the careful side", "BenchBlock");
    }

    [Fact]
    public void A_bench_takes_a_small_part_of_what_the_whole_house_takes()
    {
        // A tenth of the floor.
        var bench = Run(House(new(2.4, 5.5, 400, 4)));
        var whole = Run(MadeLayout.Bare with { Heater = new(8000, 4, 1) });
        Assert.Equal((0, 0), (bench.FrostHours, whole.FrostHours));
        Validation.Within("bench against whole house", "share of the whole house's electric heat", 0.03, 0.2, bench.StandbyKwh / whole.StandbyKwh, "common practice, no source: often a tenth", "BenchBlock");
    }

    [Fact]
    public void Better_fleece_and_more_power_never_mean_more_frost()
    {
        double Frost(double lets, double watts) => Run(House(new(3, lets, watts, 5))).FrostDegreeHoursKh;
        Assert.True(Frost(3.3, 0) < Frost(5.5, 0));
        Assert.True(Frost(5.5, 60) < Frost(5.5, 0));
        Assert.True(Frost(5.5, 120) < Frost(5.5, 60));
    }

    [Fact]
    public void Halving_the_step_changes_little()
    {
        foreach (var bench in new BenchNumbers[] { new(3, 5.5, 150, 4), new(1, 3.3, 50, 5), new(20, 12, 1000, 4) })
        {
            var (usual, half) = (Run(House(bench)), Run(House(bench), step: 150));
            Assert.InRange(usual.FrostDegreeHoursKh - half.FrostDegreeHoursKh, -Math.Max(0.5, 0.01 * half.FrostDegreeHoursKh), Math.Max(0.5, 0.01 * half.FrostDegreeHoursKh));
            Assert.InRange(usual.StandbyKwh / half.StandbyKwh, 0.99, 1.01);
        }
    }

    [Fact]
    public void A_bench_in_the_next_lane_changes_no_bit()
    {
        LayoutCase[] cases = [new(MadeLayout.Bare, null), new(House(new(3, 5.5, 300, 5)), null), new(MadeLayout.Bare with { Heater = new(1500, 4, 1) }, null)];
        var together = new Outcome[cases.Length];
        SeasonSimulator.Run(Forcing, cases, together);
        for (var i = 0; i < cases.Length; i++)
            Assert.Equal(SeasonSimulator.Run(Forcing, cases[i]), together[i]);
    }

    [Fact]
    public void Without_mains_it_does_not_heat()
    {
        var cut = MadeWinter.Of(60, 20, meanC: -6, powerCuts: [new HourSpan(1000, 12)]);
        var outcome = Run(House(new(3, 5.5, 400, 5)), MadeWinter.Forcing(cut));
        Assert.Equal(12, outcome.PowerCutHours);
        Assert.True(outcome.PowerCutLowestAirC < outcome.LowestAirC + 1e-9);
        Assert.InRange(outcome.PowerCutFrostHours, 1, 12);
        Assert.Equal(0, Run(House(new(3, 5.5, 400, 5)), MadeWinter.Forcing(MadeWinter.Of(60, 20, meanC: -6))).FrostHours);
    }
}
