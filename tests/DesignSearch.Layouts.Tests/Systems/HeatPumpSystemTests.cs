using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season.HeatPumps;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class HeatPumpSystemTests : IDisposable
{
    private readonly SmallScenario small = new();
    private readonly Scenario scenario;
    private readonly Judge judge;

    public HeatPumpSystemTests()
    {
        scenario = small.Read();
        judge = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
    }

    public void Dispose() => small.Dispose();

    private Layout With(string pump, double setC = 4) => SmallScenario.Of(scenario, ("heat_pump", pump), ("heat_pump_set_c", setC));

    [Fact]
    public void A_heat_pump_is_built_priced_wired_warned_of_and_holds_the_house()
    {
        var (bare, pump) = (judge.Of(SmallScenario.Of(scenario)), judge.Of(With("hp-cold-climate")));
        Assert.Equal("3.6 kW heat pump at 8 °C", pump.Title);
        Assert.Equal(1440, pump.Bill.Single(l => l.PartId == "hp-cold-climate").Total);
        Assert.True(pump.FrostDegreeHoursKh < 0.2 * bare.FrostDegreeHoursKh);
        var wire = pump.Wires.Single(w => w.Device == "heat pump");
        Assert.Equal((230, 9), (wire.Volts, wire.CurrentA));
        Assert.True(wire.FuseA >= 9 && wire.CableM > 0);
        Assert.Equal(
            ["Mains voltage", "Refrigerant", "Heat pump's current", "Melt water", "Warm air stream", "Carbon monoxide from a makeshift flame", "Power cut"],
            pump.Cautions.Select(c => c.Topic).Except(bare.Cautions.Select(c => c.Topic)));
        Assert.Contains(pump.Upkeep, u => u.What.Contains("filters", StringComparison.Ordinal));
        foreach (var winter in pump.Winters)
        {
            Assert.InRange(winter.Outcome.BalanceResidual, 0, 1e-9);
            var books = winter.Outcome.Books;
            var current = books.Of(HeatPumpFlows.Current) + books.Of(HeatPumpFlows.Idle);
            Assert.Equal(books.Of(HeatPumpFlows.Heat) / current, winter.Outcome.Of(HeatPumpFlows.Cop), 1e-9);
            Assert.InRange(winter.Outcome.Of(HeatPumpFlows.Cop), 2, 4);
            // Its current is bought to heat, and is paid.
            Assert.Equal(books.Of(HeatPumpFlows.Current), winter.Outcome.StandbyKwh, 1e-9);
        }
    }

    /// <summary>Heat that it holds for its own lowest setting is bought, counted and told.</summary>
    [Fact]
    public void What_holds_no_less_than_16_degrees_is_paid_for_16_degrees()
    {
        var (usual, guard) = (judge.Of(With("hp-inverter")), judge.Of(With("hp-inverter-guard")));
        Assert.Equal(16, LayoutBuilder.Build(scenario, With("hp-inverter")).Installation.Find<HeatPumpNumbers>()!.SetPointC);
        Assert.True(usual.StandbyKwh > 1.3 * guard.StandbyKwh);
        var setting = usual.Settings.Single(s => s.What == "Heat pump's remote control");
        Assert.StartsWith("16 °C", setting.Value, StringComparison.Ordinal);
        Assert.Contains("no less than 16 °C", setting.Reason, StringComparison.Ordinal);
        Assert.Equal(18, LayoutBuilder.Build(scenario, With("hp-inverter", 18)).Installation.Find<HeatPumpNumbers>()!.SetPointC);
    }

    [Fact]
    public void Cold_that_it_rests_in_is_told_and_vents_that_it_would_heat_are_refused()
    {
        var through = judge.Of(With("hp-through-wall"));
        var told = through.Checks.Single(c => c.Id == "heat-pump-cold");
        Assert.True(told.Passed);
        Assert.Contains("It rests below -5 °C outdoors", told.Sentence, StringComparison.Ordinal);
        Assert.All(through.Winters, w => Assert.True(w.Outcome.Of(HeatPumpFlows.TooColdHours) > 100));
        Assert.DoesNotContain(judge.Of(With("hp-inverter", 22)).Checks, c => c.Id == "vents-apart");
        Assert.False(judge.Of(With("hp-inverter", 23)).Checks.Single(c => c.Id == "vents-apart").Passed);
        var cold = judge.Of(With("hp-cold-climate")).Checks.Single(c => c.Id == "heat-pump-cold");
        Assert.Contains("works down to -25 °C", cold.Sentence, StringComparison.Ordinal);
        Assert.Contains("bottled gas", through.Cautions.Single(c => c.Topic == "Refrigerant").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_assumptions_can_be_set()
    {
        using var other = new SmallScenario(("[search]", "[assumptions]\nheat_pump_cop_per_k = 0\n\n[search]"));
        var cool = other.Read();
        Assert.Equal(0, cool.Assumptions[HeatPumpAssumptions.CopPerK]);
        Assert.NotEqual(scenario.Assumptions, cool.Assumptions);
        var layout = SmallScenario.Of(cool, ("heat_pump", "hp-cold-climate"), ("heat_pump_set_c", 4));
        var worse = new Judge(new LayoutAssessor(cool, WinterSet.Make(cool))).Of(layout);
        Assert.Equal(judge.Of(With("hp-cold-climate")).StandbyKwh * 1.1, worse.StandbyKwh, 0.02 * worse.StandbyKwh);
        using var wrong = new SmallScenario(("[search]", "[assumptions]\nheat_pump_cop_per_k = 1\n\n[search]"));
        Assert.Contains("heat_pump_cop_per_k", Assert.Single(wrong.Faults()).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_heat_pump_its_choice_sleeps() => Assert.DoesNotContain(
        SmallScenario.Of(scenario, ("heat_pump_set_c", 9)).Awake, a => a.Choice.Key == "heat_pump_set_c");
}
