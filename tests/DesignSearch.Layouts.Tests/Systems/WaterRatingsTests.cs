using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Every rated part of a loop, weakened to a tenth, is refused by its name.</summary>
public sealed class WaterRatingsTests
{
    private static readonly string[] Systems = ["collector", "pipe run", "tank", "freeze protection", "pump and control", "heat release"];

    // What hangs in the air of the house or in a box meets no water.
    private static readonly SmallPartRole[] Dry =
    [
        SmallPartRole.Thermostat, SmallPartRole.ProbeThermostat, SmallPartRole.LightSensor, SmallPartRole.Relay, SmallPartRole.ChangeoverRelay, SmallPartRole.TemperatureRelay, SmallPartRole.Contactor,
        SmallPartRole.HandSwitch, SmallPartRole.WarningLabel,
    ];

    /// <summary>Choices of loops that between them hold every part.</summary>
    public static TheoryData<string[]> Loops => new()
    {
        { [] },
        { ["freeze_protection=drain-valves-spring"] },
        { ["freeze_protection=drain-back-vessel", "tank=closed-300", "tank_jacket=none", "tank_count=2"] },
        { ["freeze_protection=antifreeze-plate", "pipe=copper-22", "pipe_insulation=epdm-13", "release=radiator-used", "tank=closed-300", "tank_jacket=none", "pump=circulator-25w"] },
        { ["pump=solar-pump-10w", "collector=mat-rubber-3m", "pipe=pex-20", "pipe_insulation=foam-pe-20-small"] },
    };

    [Theory]
    [MemberData(nameof(Loops))]
    public void A_part_with_a_tenth_of_its_rating_is_named(string[] choices)
    {
        using var small = new SmallScenario(("mains_at_greenhouse = false", "mains_at_greenhouse = true"));
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, [.. choices.Select(c => c.Split('=')).Select(c => (c[0], c[0] == "tank_count" ? (object)2 : c[1]))]));
        Assert.DoesNotContain(Of(built.Parts), c => !c.Passed);
        var asked = 0;
        foreach (var needed in built.Parts.Where(p => Systems.Contains(p.Purpose.System)))
        {
            foreach (var weak in Weakened(needed.Part))
            {
                asked++;
                List<NeededPart> parts = [.. built.Parts.Select(p => p == needed ? new NeededPart(weak, p.Quantity, p.Purpose, p.Duties) : p)];
                Assert.True(Of(parts).Exists(c => !c.Passed && c.Sentence.StartsWith(weak.Name, StringComparison.Ordinal)), $"{weak.Id}: {needed.Purpose.Why}");
            }
        }

        Assert.True(asked > 20, $"{asked}");
    }

    private static List<Check> Of(IReadOnlyList<NeededPart> parts)
    {
        var checks = new List<Check>();
        DutyChecks.Add(parts, checks);
        return checks;
    }

    private static IEnumerable<IPart> Weakened(IPart part)
    {
        const double Tenth = 0.1;
        switch (part)
        {
            case SmallPart p when p.MaxTemperatureC > 0 && !Dry.Contains(p.Role):
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                break;
            case Pipe p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                break;
            case PipeInsulation p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                break;
            case Pump p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                break;
            case TankJacket p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                break;
            case HeatRelease p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                break;
            case FreezeProtection p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                break;
            case Antifreeze p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                break;
            case ReliefValve p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                break;
            // 25 W of mains draw 0.11 A, a third of an ampere at the start: 0.4 A would still do.
            case SolarController p when p.Volts < 230:
                yield return p with { RatedA = p.RatedA * Tenth };
                break;
            case ExpansionVessel p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                yield return p with { MaxBar = p.MaxBar * Tenth };
                break;
            case Tank p:
                yield return p with { MaxTemperatureC = p.MaxTemperatureC * Tenth };
                if (p.IsClosed)
                    yield return p with { MaxBar = p.MaxBar * Tenth };
                break;
            default:
                break;
        }
    }
}
