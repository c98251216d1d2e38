using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Solar;
using DesignSearch.Season.Gathering;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Day heat that the fan coil brings into the tank: on the list, in the scheme, in the settings and in the season, or refused.</summary>
public sealed class GatheringSystemTests : IDisposable
{
    private readonly SmallScenario small = new();
    private readonly Scenario scenario;
    private readonly Judge judge;

    public GatheringSystemTests()
    {
        scenario = small.Read();
        judge = new Judge(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
    }

    public void Dispose() => small.Dispose();

    private Layout With(params (string Key, object Value)[] changes) => SmallScenario.Solar(scenario, [("gather_above_c", 15), .. changes]);

    [Fact]
    public void What_starts_it_is_listed_wired_drawn_and_dialled_in()
    {
        var (night, day) = (LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario)), LayoutBuilder.Build(scenario, With()));
        Assert.Empty(day.Missing);
        decimal Count(BuiltLayout built, string id) => built.Parts.Where(p => p.Part.Id == id).Sum(p => p.Quantity);
        Assert.Equal(Count(night, "thermostat-24v") + 1, Count(day, "thermostat-24v"));
        Assert.Equal(Count(night, "controller-difference") + 1, Count(day, "controller-difference"));
        var scheme = SchemeDrawing.Of(day);
        Assert.Empty(scheme.Faults(day.Parts));
        var names = scheme.Components.Select(c => c.Name).ToList();
        Assert.Contains("day thermostat of the heat release", names);
        Assert.Contains("difference controller of the heat release", names);
        Assert.DoesNotContain("difference controller of the heat release", SchemeDrawing.Of(night).Components.Select(c => c.Name));
        Assert.Contains(day.Settings(scenario), t => t is { What: "Day thermostat of the heat release", Value: "starts above 15 °C" });
        Assert.All(judge.Of(With()).Wires.Where(w => w.Device.Contains("heat release", StringComparison.Ordinal)),
            w => Assert.Contains("by day the day thermostat", w.SwitchedBy, StringComparison.Ordinal));
        var numbers = day.Installation.Find<GatheringNumbers>()!;
        Assert.Equal((15, day.Installation.Release.ElectricW), (numbers.AboveC, numbers.FanW));
        Assert.Equal(Math.Min(day.Installation.Release.ConductanceWPerK, 4186 * day.Installation.Release.FlowKgPerS), numbers.AirWPerK, 0.5);
        Assert.Null(night.Installation.Find<GatheringNumbers>());
    }

    /// <summary>The difference that the controller is set to is the one that is simulated.</summary>
    [Fact]
    public void The_controller_is_set_as_it_is_simulated()
    {
        string Dialled(Scenario of) => LayoutBuilder.Build(scenario, With()).Settings(of).Single(t => t.What == "Difference controller of the heat release").Value;
        Assert.Equal("air 3 K over the tank's top on, 1 K off", Dialled(scenario));
        Assert.Equal("air 6 K over the tank's top on, 2 K off", Dialled(scenario with { Assumptions = scenario.Assumptions.With(GatheringAssumptions.StartK, 6) }));
    }

    [Theory]
    [InlineData("gather_above_c", 15, "gathering-set", true)]
    [InlineData("gather_above_c", 7, "gathering-set", false)]
    [InlineData("gather_above_c", 24, "gathering-set", false)]
    [InlineData("release", "fan-coil-small", "gathering-fan", true)]
    [InlineData("release", "radiator-double", "gathering-fan", false)]
    public void A_plant_that_would_bury_bought_heat_or_has_no_fan_is_refused(string key, object value, string check, bool passes)
    {
        var found = judge.Of(With((key, value))).Checks.Single(c => c.Id == check);
        Assert.Equal(passes, found.Passed);
    }

    /// <summary>Every fan coil with every pump of the starter catalogue, on mains and on low voltage: what is drawn is bought, and what is bought is drawn.</summary>
    [Fact]
    public void With_any_fan_coil_and_pump_list_and_scheme_agree()
    {
        var pumps = scenario.Catalogue.Of<Pump>().Where(p => p.Volts > 0).Select(p => p.Id).ToList();
        var coils = scenario.Catalogue.Of<HeatRelease>().Where(r => r.FanWatts > 0).Select(r => r.Id).ToList();
        Assert.True(pumps.Count > 3 && coils.Count > 3);
        var whole = 0;
        foreach (var (pump, coil) in pumps.SelectMany(p => coils.Select(c => (p, c))))
        {
            var built = LayoutBuilder.Build(scenario, With(("pump", pump), ("release", coil)));
            // Where no pump of its voltage moves the release's water, the list says so and there is no plant to draw.
            if (built.Missing.Count > 0)
                continue;
            whole++;
            Assert.Empty(SchemeDrawing.Of(built).Faults(built.Parts).Select(f => pump + " " + coil + ": " + f));
            var mains = scenario.Catalogue.Of<HeatRelease>().Single(r => r.Id == coil).Volts >= 230;
            Assert.Contains(built.Parts, p => p.Part.Id == (mains ? "controller-difference-mains" : "controller-difference"));
        }

        Assert.True(whole > 3, $"{whole} whole");
    }

    [Fact]
    public void Whoever_gathers_nothing_is_asked_nothing()
    {
        var judged = judge.Of(SmallScenario.Solar(scenario));
        Assert.DoesNotContain(judged.Checks, c => c.Id.StartsWith("gathering", StringComparison.Ordinal));
        Assert.All(judged.Winters, w => Assert.Equal(0, w.Outcome.Books.Of(GatheringFlows.Gathered)));
    }
}
