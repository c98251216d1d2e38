using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>The settings of a solar plant: one line for each control that is on its list, and none for what is not.</summary>
public sealed class SolarSettingsTests
{
    private const int Layouts = 400;

    // What is looked at or done, and is no control.
    private static readonly string[] NoControl =
    [
        "Tilt of the collector", "Direction of the collector", "Check of the warm pipe", "Fill of the loop", "Before the first frost", "In summer",
        "Footing of a frame", "Stops of the frame", "Before a gale", "Turning the frame by hand",
    ];

    private static readonly (string What, Func<NeededPart, bool> Part)[] Controls =
    [
        ("Limit switches", Role(SmallPartRole.LimitSwitch)),
        ("Timer of the frame", Role(SmallPartRole.Timer)),
        ("Delay relay of the frame", Role(SmallPartRole.DelayRelay)),
        ("Sun clock of the frame", Role(SmallPartRole.SunClock)),
        ("Light sensor of the frame", p => Role(SmallPartRole.LightSensor)(p) && p.Purpose.System == "drive"),
        ("Pump starts", p => p.Part is SolarController),
        ("Pump stops", p => p.Part is SolarController),
        ("Tank's ceiling", p => p.Part is SolarController),
        ("Tank's top at which the release stops", p => Role(SmallPartRole.ProbeThermostat)(p) && p.Purpose.System == "heat release"),
        ("Flow", Role(SmallPartRole.RegulatingValve)),
        ("Flow", Role(SmallPartRole.FlowIndicator)),
        ("Drain-back vessel", p => p.Part is FreezeProtection { VesselAboveTankM: > 0 }),
        ("Temperature relay of the drain valves", Role(SmallPartRole.TemperatureRelay)),
        ("Light sensor of the drain valves", p => Role(SmallPartRole.LightSensor)(p) && p.Purpose.System == "freeze protection"),
        ("Make-up of the tank", Role(SmallPartRole.MakeUpValve)),
        ("Thermostat of the heat release", p => Role(SmallPartRole.Thermostat)(p) && p.Purpose.System == "heat release"),
        ("Band of that thermostat", p => Role(SmallPartRole.Thermostat)(p) && p.Purpose.System == "heat release"),
        ("No start above", p => p.Part is SolarController { LockOutToC: > 0 }),
        ("Cut-out in the tank's top", Role(SmallPartRole.TankCutOut)),
        ("Antifreeze", p => p.Part is Antifreeze),
    ];

    // Lines that a control has or has not by what it is set to do.
    private static readonly (string What, Func<SolarLoop, bool> When, Func<NeededPart, bool> Part)[] Sometimes =
    [
        ("Pressure of the loop", l => l.ClosedLoop is not null, p => p.Part is ExpansionVessel),
        ("Pressure of the tank", l => l.ClosedTank is not null, p => p.Part is ExpansionVessel),
        ("Steps of the frame", l => l.Drive is not null && l.Mount.Turning == TurningKind.Stepped, Role(SmallPartRole.SunClock)),
        ("Order of the drives", l => l.Drive is not null && l.Frames > 1, p => p.Part is Drive),
    ];

    [Fact]
    public void Each_control_on_the_list_has_its_line_and_nothing_else_has()
    {
        var scenario = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));
        var space = new LayoutSpace(scenario);
        var random = new Random(11);
        var (looked, seen) = (0, new HashSet<string>());
        while (looked < Layouts)
        {
            var built = LayoutBuilder.Build(scenario, space.At([.. space.Variables.Select(v => (double)random.Next(v.Levels))]));
            if (built.Find<DesignedSolar>() is not { } solar || built.Missing.Count > 0)
                continue;
            looked++;
            var lines = (built with { Systems = [solar] }).Settings(scenario).Select(s => s.What).ToList();
            Assert.Equal(lines.Count, lines.Distinct().Count());
            seen.UnionWith(lines);
            foreach (var (what, part) in Controls)
            {
                // A vessel whose kit may stand high stands low where the collector does.
                var there = what == "Drain-back vessel" ? solar.Loop.VesselAboveTankM > 0 : built.Parts.Any(part);
                Assert.True(lines.Contains(what) == there, $"{what}: {lines.Contains(what)} among the settings, {there} on the list");
            }

            foreach (var (what, when, part) in Sometimes)
                Assert.True(lines.Contains(what) == when(solar.Loop) && (!when(solar.Loop) || built.Parts.Any(part)), what);
            Assert.Empty(lines.Except(NoControl).Except(Controls.Select(c => c.What)).Except(Sometimes.Select(c => c.What)));
        }

        Assert.True(seen.Count > 20, string.Join(", ", seen));
    }

    private static Func<NeededPart, bool> Role(SmallPartRole role) => p => p.Part is SmallPart small && small.Role == role;
}
