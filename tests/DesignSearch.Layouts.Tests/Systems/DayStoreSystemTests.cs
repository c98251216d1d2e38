using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season.DayStore;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class DayStoreSystemTests : IDisposable
{
    private readonly SmallScenario small = new();
    private readonly Scenario scenario;
    private readonly Judge judge;

    public DayStoreSystemTests()
    {
        scenario = small.Read();
        judge = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
    }

    public void Dispose() => small.Dispose();

    private Layout With(params (string Key, object Value)[] changes) => SmallScenario.Of(scenario,
    [
        ("day_pipe", "earth-corrugated-100"), ("day_pipe_m_per_m2", 4), ("day_pipe_depth_m", 0.5), ("day_fan", "store-fan-24v-30w"),
        ("day_charge_c", 18), ("day_set_c", 6), ("control_box", "cheapest"), .. changes,
    ]);

    /// <summary>5 m by 3 m: pipes of 4 m, 60 m in all.</summary>
    [Fact]
    public void A_store_is_laid_out_priced_wired_and_warned_of()
    {
        var built = LayoutBuilder.Build(scenario, With());
        Assert.Empty(built.Missing);
        Assert.Equal(63, built.Parts.Single(p => p.Part.Id == "earth-corrugated-100").Quantity);
        Assert.Contains(built.Parts, p => p.Part.Id == "earth-header-block");
        Assert.Contains(LayoutBuilder.Build(scenario, With(("day_pipe_m_per_m2", 2))).Parts, p => p.Part.Id == "earth-header-barrels");
        Assert.Equal(2, built.Parts.Single(p => p.Part.Id == "thermostat-24v").Quantity);
        Assert.Single(built.Parts, p => p.Part.Id == "controller-difference");
        var numbers = built.Installation.Find<DayStoreNumbers>()!;
        Assert.Equal((18, 6, 30), (numbers.ChargeAboveC, numbers.SetPointC, numbers.FanW));
        // No more than all the fan moves through the pipes, 340 m³/h at most.
        Assert.InRange(numbers.AirWPerK, 30, EarthPipeAir.JPerM3K * 340 / 3600);

        var (bare, store) = (judge.Of(SmallScenario.Of(scenario)), judge.Of(With()));
        Assert.Equal("day-heat store of 60 m of pipe", store.Title);
        Assert.True(store.FrostDegreeHoursKh < bare.FrostDegreeHoursKh && store.LowestAirC > bare.LowestAirC);
        Assert.Contains(store.Wires, w => w.Device == "fan of the day-heat store" && w.Volts == 24);
        Assert.All(store.Winters, w => Assert.InRange(w.Outcome.BalanceResidual, 0, 1e-9));
        Assert.Contains(store.Cautions, c => c.Topic == "Digging" && c.Text.Contains("trench", StringComparison.Ordinal));
        Assert.Contains(store.Cautions, c => c.Topic == "Air from the ground" && c.Text.Contains("radon", StringComparison.Ordinal));
        Assert.DoesNotContain(store.Cautions, c => c.Topic == "Mains fan");
        Assert.Contains(judge.Of(With(("day_fan", "store-fan-mains-110w"))).Cautions, c => c.Topic == "Mains fan");
    }

    /// <summary>What is dialled in is what the season runs.</summary>
    [Fact]
    public void The_difference_controller_is_set_as_it_is_simulated()
    {
        Assert.Equal("3 K on, 1 K off", Dialled(scenario));
        var other = scenario.Assumptions.With(DayStoreAssumptions.StartK, 4.5);
        Assert.Equal("4.5 K on, 1.5 K off", Dialled(scenario with { Assumptions = other }));

        string Dialled(Scenario of) => LayoutBuilder.Build(scenario, With()).Settings(of)
            .Single(t => t.What == "Difference controller of the day-heat store").Value;
    }

    /// <summary>Told, not refused, by what the winters were.</summary>
    [Fact]
    public void Where_it_is_not_worth_its_digging_it_says_so()
    {
        // A heat pump that holds 8 °C leaves it nothing to bring back.
        var weak = judge.Of(With(("heat_pump", "hp-cold-climate"), ("heat_pump_set_c", 4))).Checks.Single(c => c.Id == "day-store-worth");
        Assert.True(weak.Passed);
        Assert.StartsWith("Not worth its digging: it brings back only", weak.Sentence, StringComparison.Ordinal);
        var store = judge.Of(With());
        var books = store.Winters.Select(w => w.Outcome.Books).ToList();
        var times = books.Sum(b => b.Of(DayStoreFlows.Return)) / books.Sum(b => b.Of(DayStoreFlows.Fan));
        var told = store.Checks.Single(c => c.Id == "day-store-worth").Sentence;
        Assert.Contains(FormattableString.Invariant($"{times:0.0} times its fan's current"), told, StringComparison.Ordinal);
        Assert.All(store.Winters.Select(w => w.Outcome), o => Assert.Equal(
            o.Books.Of(DayStoreFlows.Return) / o.Books.Of(DayStoreFlows.Fan), o.Of(DayStoreFlows.Cop), 1e-9));
    }

    [Theory]
    [InlineData("day_pipe_m_per_m2", 4, "day-store-spacing", true)]
    [InlineData("day_pipe_m_per_m2", 8, "day-store-spacing", false)]
    [InlineData("day_charge_c", 8, "day-store-set", false)]
    [InlineData("day_charge_c", 24, "day-store-set", false)]
    [InlineData("day_charge_c", 9, "day-store-set", true)]
    public void What_cannot_work_is_refused(string key, double value, string check, bool passes) =>
        Assert.Equal(passes, judge.Of(With((key, value))).Checks.Single(c => c.Id == check).Passed);

    [Fact]
    public void Pipes_that_all_but_touch_are_refused()
    {
        // 160 mm, 8 m a m²: all that fit in 3 m.
        var check = judge.Of(With(("day_pipe", "earth-smooth-160"), ("day_pipe_m_per_m2", 8))).Checks.Single(c => c.Id == "day-store-spacing");
        Assert.False(check.Passed);
        Assert.Contains("18 pipes of 160 mm", check.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Heat_bought_near_its_upper_set_point_is_refused()
    {
        bool Passes(params (string, object)[] more) => judge.Of(With(more)).Checks.Single(c => c.Id == "day-store-set").Passed;
        Assert.True(Passes(("heater", "fan-heater-1kw"), ("heater_set_c", 15)));
        Assert.False(Passes(("heater", "fan-heater-1kw"), ("heater_set_c", 16)));
        // Wished for 4 °C, it holds no less than 16.
        Assert.False(Passes(("heat_pump", "hp-inverter"), ("heat_pump_set_c", 4)));
        Assert.True(Passes(("heat_pump", "hp-inverter"), ("heat_pump_set_c", 4), ("day_charge_c", 19)));
    }

    [Fact]
    public void Without_pipes_its_choices_sleep() => Assert.DoesNotContain(
        SmallScenario.Of(scenario, ("day_charge_c", 20), ("day_set_c", 9)).Awake,
        a => a.Choice.Key.StartsWith("day_", StringComparison.Ordinal) && a.Choice.Key != "day_pipe");
}
