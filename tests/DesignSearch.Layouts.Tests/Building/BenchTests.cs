using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class BenchTests
{
    private static readonly (string, string) Enough = ("frost_limit_c = 2.0", "frost_limit_c = 2.0\nbench_enough_m2 = 2.4");


    [Fact]
    public void A_heated_bench_is_judged_where_the_plants_stand_and_says_so()
    {
        using var small = new SmallScenario(Enough);
        var scenario = small.Read();
        var judge = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
        var (bare, bench, heated) = (judge.Of(SmallScenario.Of(scenario)), judge.Of(SmallScenario.Of(scenario, ("bench", "bench-mat-120"), ("bench_set_c", 4))), judge.Of(SmallScenario.Of(scenario, ("heater", "fan-heater-1500"), ("heater_set_c", 4))));
        Assert.Equal("under the fleece", bench.Plants?.Where);
        Assert.Equal("2.4 m² heated bench under fleece", bench.Title);
        Assert.Equal(0, bench.FrostHours);
        Assert.InRange(bench.LowestAirC, 3.5, 4.01);
        Assert.InRange(bench.LowestHouseAirC, bare.LowestAirC, bare.LowestAirC + 2);
        Assert.InRange(bench.StandbyKwh, 0.02 * heated.StandbyKwh, 0.3 * heated.StandbyKwh);
        Assert.True(heated.WorstFrostHours > 0);
        Assert.Contains(bench.Cautions, c => c.Topic == "Heated bench");
        Assert.Contains(bench.Settings, s => s.What == "Bench's thermostat" && s.Value == "4 °C");
        Assert.Contains(bench.Wires, w => w.Device == "heated bench" && w.Volts == 230 && w.SwitchedBy == "thermostat under its fleece");
        Assert.True(bench.Checks.Single(c => c.Id == "bench-enough").Passed);
        // Its electricity is paid: at the tariff, with what pumps take (nothing).
        Assert.Equal(0.42 * bench.StandbyKwh, (double)bench.Running.ElectricityPerYear, 2);
    }

    [Fact]
    public void Where_a_bench_is_enough_it_wins_and_the_answer_says_that_only_the_bench_is_held()
    {
        using var sample = new WeighedSample(Enough, ("collector = [\"none\", \"flat-plate-2m2\"]", "collector = \"none\""));
        Assert.Contains("2.4 m² heated bench under fleece", sample.Judgement.Answer, StringComparison.Ordinal);
        Assert.Contains("Only the plants on the bench are held: the air of the house itself falls to -1", sample.Judgement.Answer, StringComparison.Ordinal);
        var compared = sample.Weighing.Comparisons.Single(c => c.Question.StartsWith("Bench under fleece", StringComparison.Ordinal));
        Assert.Contains("It pays: without bench under fleece the cheapest that holds costs", compared.Answer, StringComparison.Ordinal);
        var pick = sample.Weighing.Picks.First(p => sample.Judgement.Ranking[p.Rank - 1].Plants is not null);
        Assert.Contains(pick.Doubts, d => d.What == "the fleece lets 1.5 times as much heat out");
        Assert.NotNull(pick.Week!.Plants);
    }

    [Fact]
    public void Where_the_whole_house_must_be_held_a_bench_is_refused_with_its_place()
    {
        using var small = new SmallScenario(("wind_break = \"none\"", "wind_break = \"none\"\nbench = [\"none\", \"bench-mat-120\"]"));
        var fault = Assert.Single(small.Faults());
        Assert.Contains("bench_enough_m2", fault.ToString(), StringComparison.Ordinal);
        Assert.True(fault.Line > 1 && fault.Column > 1, fault.ToString());
    }

    [Fact]
    public void Where_the_whole_house_must_be_held_a_layout_file_with_a_bench_fails_a_check()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var layout = SmallScenario.Of(scenario, ("bench", "bench-mat-120"), ("bench_set_c", 4));
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        Assert.Contains(assessor.Checks(assessor.Price(layout), []), c => c.Id == "bench-enough" && !c.Passed);
        Assert.Equal(ChoiceValue.None, Assert.Single(scenario.Choices.Single(c => c.Choice.Key == "bench").Levels));
    }

    [Fact]
    public void A_bench_larger_than_the_floor_is_refused()
    {
        using var small = new SmallScenario(("frost_limit_c = 2.0", "frost_limit_c = 2.0\nbench_enough_m2 = 15.5"));
        Assert.Contains("floor of 15 m²", Assert.Single(small.Faults()).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Fleece_alone_has_no_thermostat_no_current_and_no_set_point()
    {
        using var small = new SmallScenario(Enough);
        var scenario = small.Read();
        var layout = SmallScenario.Of(scenario, ("bench", "bench-fleece"), ("bench_set_c", 4));
        Assert.DoesNotContain(layout.Awake, a => a.Choice.Key == "bench_set_c");
        var built = LayoutBuilder.Build(scenario, layout);
        Assert.Null(built.Supply);
        Assert.Equal(["bench-fleece"], built.Parts.Select(p => p.Part.Id));
        Assert.Equal("2.4 m² bench under fleece", PlantWords.Title(built));
    }

    [Fact]
    public void A_bench_of_low_voltage_gets_a_relay_that_bears_it()
    {
        using var small = new SmallScenario(Enough, ("mains_at_greenhouse = false", "mains_at_greenhouse = true"));
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Of(scenario, ("bench", "bench-24v-100"), ("bench_set_c", 4), ("control_box", "cheapest"), ("cable_mm2", 0), ("supply_w", 0)));
        // 240 W at 24 V are 10 A: more than the thermostat's 5 and the small relay's 8. A quarter to spare makes 300 W.
        Assert.Contains(built.Parts, p => p.Part.Id == "relay-24v-30a");
        Assert.Empty(built.Missing);
        Assert.Equal("supply-24v-480w", Assert.Single(built.Supply!.Lines).Supply!.Id);
        Assert.Contains(WireWriter.Of(built), w => w.Device == "heated bench" && w.CurrentA == 10 && w.SwitchedBy.StartsWith("relay", StringComparison.Ordinal));
    }
}
