using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What a loop needs beside its chosen parts: each with its line on the list, its setting and its row in the wiring.</summary>
public sealed class WaterSchemeTests
{
    private static readonly (string, object)[] Full =
        [("freeze_protection", "antifreeze-plate"), ("pipe", "copper-22"), ("pipe_insulation", "epdm-13"), ("release", "radiator-used")];

    [Fact]
    public void The_antifreeze_that_is_bought_reaches_what_its_kit_is_made_for()
    {
        string Fluid(string kit) => Built([.. Full, ("freeze_protection", kit)]).Parts.Single(p => p.Part is Antifreeze).Part.Id;
        // Melinder: 30 % by mass freezes at -12.8 °C, 40 % at -20.6.
        Assert.Equal(("antifreeze-30", "antifreeze-40"), (Fluid("antifreeze-coil"), Fluid("antifreeze-plate")));
    }

    [Fact]
    public void The_ceiling_has_its_sensor_and_the_throttle_its_indicator()
    {
        var built = Built([]);
        // One at the collector, two of the controller and one of the release's own thermostat at the tank.
        Assert.Equal(4m, Count(built, SmallPartRole.TemperatureSensor));
        Assert.Equal((1m, 1m), (Count(built, SmallPartRole.RegulatingValve), Count(built, SmallPartRole.FlowIndicator)));
        Assert.Contains(WireWriter.Of(built), w => w.Device == "collector pump" && w.SwitchedBy.Contains("tank's top", StringComparison.Ordinal));
        // The release's pump of ten watts needs a strainer, a loop pump of 19 W does not.
        Assert.Equal(1m, Count(built, SmallPartRole.Strainer));
        Assert.Equal(2m, Count(Built([("pump", "solar-pump-10w")]), SmallPartRole.Strainer));
    }

    [Theory]
    [InlineData("fan-coil-small", "pump of the heat release", "fan of the heat release")]
    [InlineData("radiator-used", "pump of the heat release", null)]
    public void A_release_runs_only_while_house_and_tank_both_call(string release, string pump, string? fan)
    {
        var built = Built([("release", release)]);
        var scheme = SchemeDrawing.Of(built);
        var tank = scheme.Components.Single(c => c.Name == "tank thermostat of the heat release").Name;
        Assert.Equal(
            ["sensor of the release at the tank's top", "thermostat of the heat release"],
            scheme.Joints.Where(j => j.Medium == Medium.Signal && j.To == tank).Select(j => j.From).Order(StringComparer.Ordinal));
        // Nothing but that thermostat, or a relay that it tells, starts pump or fan.
        foreach (var told in new[] { pump, fan }.Where(d => d is not null))
        {
            var by = scheme.Joints.Single(j => j.Medium == Medium.Signal && j.To == told).From;
            Assert.True(by == tank || scheme.Joints.Any(j => j.From == tank && j.To == by), $"{told} by {by}");
            Assert.Contains("and that of its tank, in line", WireWriter.Of(built).Single(w => w.Device == told).SwitchedBy, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_gap_of_air_fills_whatever_stands_open()
    {
        Assert.Equal(1m, Count(Built([]), SmallPartRole.FreeOutlet));
        Assert.Equal(1m, Count(Built(Full), SmallPartRole.FreeOutlet));
        Assert.Equal(1m, Count(Built([("freeze_protection", "drain-valves-spring")]), SmallPartRole.MakeUpValve));
        Assert.Equal(0m, Count(Built([.. Full, ("tank", "closed-300"), ("tank_jacket", "none")]), SmallPartRole.FreeOutlet));
    }

    [Theory]
    [InlineData("drain-valves-spring", 24, 0)]
    [InlineData("drain-valves-mains", 230, 1)]
    public void Drain_valves_come_with_all_that_works_them(string kit, double volts, int contactors)
    {
        var built = Built([("freeze_protection", kit)]);
        SmallPartRole[] roles = [SmallPartRole.TemperatureRelay, SmallPartRole.LightSensor, SmallPartRole.ChangeoverRelay, SmallPartRole.DrainPoint, SmallPartRole.MakeUpValve];
        Assert.All(roles, r => Assert.Equal(1m, Count(built, r)));
        Assert.Equal(5m, Count(built, SmallPartRole.TemperatureSensor));
        Assert.Equal(contactors, Count(built, SmallPartRole.Contactor));
        var valves = WireWriter.Of(built).Single(w => w.Device == "drain valves");
        Assert.Equal(volts, valves.Volts);
        Assert.Contains("by day the temperature relay, by night the light sensor", valves.SwitchedBy, StringComparison.Ordinal);
        Assert.Equal(contactors == 1, valves.SwitchedBy.Contains("contactor", StringComparison.Ordinal));
        Assert.Contains(WireWriter.Of(built), w => w.Device.StartsWith("Temperature relay", StringComparison.Ordinal) && w.Volts == 24);
        var settings = Settings(built);
        Assert.Contains(settings, s => s.What == "Fill of the loop" && s.Reason.Contains("drain point", StringComparison.Ordinal));
        Assert.DoesNotContain(settings, s => s.Reason.Contains("stands in the tank", StringComparison.Ordinal) || s.Reason.Contains("all water comes back", StringComparison.Ordinal));
    }

    [Fact]
    public void The_pump_is_held_back_below_what_pipe_and_sleeve_bear()
    {
        // PE-X and PE foam bear 90 °C, copper in rubber 150: 5 K less, and never above 95.
        Assert.Equal(85, Loop([]).Heat.LockOutC);
        Assert.Equal(95, Loop([("pipe", "copper-22"), ("pipe_insulation", "epdm-13")]).Heat.LockOutC);
        // A rubber mat stands at 80 °C: nothing to hold back, but a sensor with a torn cable reads more, and then the pump must not run.
        var mat = Built([("collector", "mat-rubber-3m"), ("pipe", "pex-20"), ("pipe_insulation", "foam-pe-20-small")]);
        Assert.Equal((95, false), (mat.Find<DesignedSolar>()!.Loop.Heat.LockOutC, mat.Find<DesignedSolar>()!.Loop.Heat.IsLockedOut));
        Assert.Contains(Settings(mat), s => s is { What: "No start above", Value: "collector 95 °C" } && s.Reason.Contains("torn cable", StringComparison.Ordinal));
        Assert.Contains(Settings(Built([])), s => s is { What: "No start above", Value: "collector 85 °C" });
    }

    [Fact]
    public void What_comes_down_the_pipe_is_hotter_than_the_ceiling_by_the_rise_of_full_sun()
    {
        // 0.9 L/min·m² of water: 62.8 W/(m²K); η₀ 0.74 of 1000 W/m²: 11.8 K. A 90 °C store behind 90 °C pipe: 85 at the pipe, 73.2 at the tank.
        var heat = Loop([("tank", "cylinder-300"), ("tank_jacket", "none"), ("release", "radiator-used")]).Heat;
        Assert.Equal(85, heat.OutletC, 0.01);
        Assert.Equal(85 - 11.79, heat.CeilingC, 0.02);
        // The used cage bears 60 °C: its own limit is the lower one.
        Assert.Equal(55, Loop([]).Heat.CeilingC, 1e-9);
    }

    [Fact]
    public void Vessels_are_bought_as_large_as_the_sum_says()
    {
        foreach (var (tanks, kit) in new[] { (1, "antifreeze-plate"), (3, "antifreeze-plate"), (2, "drain-back-vessel") })
        {
            var built = Built([.. Full, ("freeze_protection", kit), ("tank", "closed-300"), ("tank_jacket", "none"), ("tank_count", tanks)]);
            var loop = built.Find<DesignedSolar>()!.Loop;
            var wanted = (loop.ClosedLoop?.WantedL ?? 0) + (tanks * loop.ClosedTank!.WantedL);
            Assert.True(wanted > 15 * tanks);
            Assert.True(built.Parts.Where(p => p.Part is ExpansionVessel).Sum(p => (double)p.Quantity * ((ExpansionVessel)p.Part).Litres) >= wanted);
            Assert.Equal(tanks + (loop.ClosedLoop is null ? 0 : 1), built.Parts.Where(p => p.Part is ReliefValve).Sum(p => p.Quantity));
        }
    }

    [Fact]
    public void Metal_beside_the_collector_runs_empty_as_the_long_pipe_does()
    {
        // 13 mm of copper behind 16 mm of plastic would hold water; 20 mm does not.
        Assert.Equal("copper-22", Loop([("pipe", "multilayer-20"), ("pipe_insulation", "foam-pe-20-small")]).FirstMetres!.Id);
    }

    [Fact]
    public void The_whole_lift_counts_while_the_pump_runs()
    {
        // The plate is 2 m long and stands at 60°: its top is 1.73 m over its lower edge.
        // 3.0 m of head less 2.4 m of lift: at most 11 √(0.6/3.0) = 4.92 L/min, less what rubs; with half the lift it would be 8.5.
        using var small = new SmallScenario();
        var scenario = small.Read();
        scenario = scenario with { Site = scenario.Site with { CollectorAboveTankM = 2.4 - (2 * Math.Sin(Math.PI / 3)) } };
        var layout = SmallScenario.Solar(scenario, ("pump", "solar-pump-10w"), ("flow_l_per_min_m2", 2));
        var flow = LayoutBuilder.Build(scenario, layout).Find<DesignedSolar>()!.Loop.Flow.KgPerS * 60;
        Assert.InRange(flow, 3, 4.92);
    }

    [Fact]
    public void A_vessel_on_high_leaves_less_to_lift_and_enough_to_fall()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        scenario = scenario with { Site = scenario.Site with { CollectorAboveTankM = 2.8 } };
        SolarLoop Of(string kit) => LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, ("freeze_protection", kit))).Find<DesignedSolar>()!.Loop;
        var own = 2 * Math.Sin(Math.PI / 3);
        Assert.Equal(2.8 + own, Of("drain-back-simple").Flow.LiftM, 1e-9);
        // Two metres up, 0.8 m are left to the lower edge; 14 m of pipe want 0.28 m of fall.
        var vessel = Of("drain-back-vessel");
        Assert.Equal((2.0, 0.8), (vessel.VesselAboveTankM, Math.Round(vessel.FallM, 9)));
        Assert.Equal(0.8 + own, vessel.Flow.LiftM, 1e-9);
    }

    [Fact]
    public void A_relief_valve_opens_below_what_it_protects()
    {
        var loop = Loop([.. Full, ("tank", "closed-300"), ("tank_jacket", "none")]);
        Assert.True(loop.ClosedTank!.Relief!.OpensAtBar <= loop.Tank.MaxBar);
        Assert.True(loop.ClosedLoop!.Relief!.OpensAtBar <= loop.Collector.MaxBar);
    }

    private static SolarLoop Loop((string, object)[] choices) => Built(choices).Find<DesignedSolar>()!.Loop;

    private static decimal Count(BuiltLayout built, SmallPartRole role) => built.Parts.Where(p => p.Part is SmallPart small && small.Role == role && p.Purpose.System != "drive").Sum(p => p.Quantity);

    private static List<Setting> Settings(BuiltLayout built)
    {
        using var small = new SmallScenario();
        return [.. built.Settings(small.Read())];
    }

    private static BuiltLayout Built((string, object)[] choices)
    {
        using var small = new SmallScenario(("mains_at_greenhouse = false", "mains_at_greenhouse = true"));
        var scenario = small.Read();
        return LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, choices));
    }
}
