using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems;
using DesignSearch.Parts.OffGrid;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Every control on the bill that can be dialled has its line among the settings, and nothing that is not on the bill has one.</summary>
public sealed class DialTests
{
    private const int Draws = 600;

    // What has a knob, a screw or a menu. A relay, a switch, a diode or a sensor has none.
    private static readonly SmallPartRole[] Dialled =
    [
        SmallPartRole.Thermostat, SmallPartRole.ProbeThermostat, SmallPartRole.DifferenceController, SmallPartRole.Timer, SmallPartRole.SunClock, SmallPartRole.DelayRelay,
        SmallPartRole.TemperatureRelay, SmallPartRole.TankCutOut, SmallPartRole.RegulatingValve, SmallPartRole.MakeUpValve, SmallPartRole.LowVoltageDisconnect,
    ];

    private static readonly Scenario Wide = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));

    [Fact]
    public void Each_has_its_line_in_random_plants() => Hold(Wide);

    [Fact]
    public void Without_mains_too()
    {
        using var house = new LonelyHouse();
        Hold(house.Read());
    }

    private static void Hold(Scenario scenario)
    {
        var (lines, systems) = (0, new HashSet<string>());
        foreach (var built in Plants(scenario))
        {
            var dialled = built.Systems.SelectMany(s => s.Dials(scenario)).Select(d => d.On).ToHashSet();
            foreach (var part in built.Parts.Where(p => p.Part is SolarController or ChargeController || (p.Part is SmallPart small && Dialled.Contains(small.Role))))
            {
                Assert.True(dialled.Contains(part.Purpose), $"nothing is dialled in on {part.Part.Name}: {part.Purpose.Why}");
                systems.Add(part.Purpose.System);
                lines++;
            }
        }

        Assert.True(lines > Draws && systems.Count >= 6, $"{lines} in {string.Join(", ", systems)}");
    }

    [Fact]
    public void What_is_not_bought_has_none()
    {
        foreach (var built in Plants(Wide).Take(60))
        {
            var settings = built.Settings(Wide);
            foreach (var gone in built.Parts.Select(p => p.Purpose).Distinct())
            {
                var less = (built with { Parts = [.. built.Parts.Where(p => p.Purpose != gone)] }).Settings(Wide);
                var lost = built.Systems.SelectMany(s => s.Dials(Wide)).Where(d => d.On == gone).Select(d => d.Setting);
                Assert.Equal(settings.Except(lost), less);
            }
        }
    }

    private static IEnumerable<BuiltLayout> Plants(Scenario scenario)
    {
        for (var seed = 0; seed < Draws; seed++)
        {
            var random = new Random(seed);
            var levels = SystemList.All.Choices.All.Select((_, i) => scenario.Choices[i].Levels).ToList();
            var built = LayoutBuilder.Build(scenario, Layout.Of([.. levels.Select(l => l[random.Next(l.Count)])], scenario.Systems.Choices));
            if (built.Missing.Count == 0)
                yield return built;
        }
    }
}
