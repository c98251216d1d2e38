using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Barrels;
using DesignSearch.Layouts.Systems.Solar;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>Checks that hang on few choices: once these are made the check is known, whatever else is open. A test changes the others and asks again.</summary>
internal static class RuleScopes
{
    /// <summary>The checks, each with all choices that it hangs on.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<Choice>> All { get; } = new Dictionary<CheckRule, IReadOnlyList<Choice>>
    {
        [SolarRules.Space] = [SolarChoices.Collector, SolarChoices.CollectorCount],
        [SolarRules.MountArea] = [SolarChoices.Collector, SolarChoices.CollectorCount, SolarChoices.Mount],
        [SolarRules.Freezing] = [SolarChoices.Collector, SolarChoices.Protection, SolarChoices.Pipe],
        [SolarRules.UnpoweredFrost] = [SolarChoices.Collector, SolarChoices.Protection, SolarChoices.Pipe],
        [SolarRules.Headroom] = [SolarChoices.Collector, SolarChoices.Tank],
        [SolarRules.OpenTank] = [SolarChoices.Collector, SolarChoices.Protection, SolarChoices.Tank],
        [SolarRules.InsulationFit] = [SolarChoices.Collector, SolarChoices.Pipe, SolarChoices.Insulation],
        [SolarRules.DrainFall] = [SolarChoices.Collector, SolarChoices.Protection, SolarChoices.Pipe],
        [SolarRules.FirstMetres] = [SolarChoices.Collector, SolarChoices.Protection, SolarChoices.Pipe],
        [SolarRules.PumpLift] = [SolarChoices.Collector, SolarChoices.CollectorCount, SolarChoices.Protection, SolarChoices.TiltDeg, SolarChoices.LoopPump],
        [SolarRules.PumpFlow] =
        [
            SolarChoices.Collector, SolarChoices.CollectorCount, SolarChoices.Protection, SolarChoices.TiltDeg, SolarChoices.LoopPump,
            SolarChoices.Pipe, SolarChoices.FlowLPerMinM2,
        ],
        [PlantRules.StoreFloor] = [BarrelChoices.Barrel, BarrelChoices.Count, SolarChoices.Collector, SolarChoices.Tank, SolarChoices.TankCount],
        [PlantRules.FloorLoad] = [BarrelChoices.Barrel, SolarChoices.Collector, SolarChoices.Tank],
    }.ToDictionary(p => p.Key.Id, p => p.Value, StringComparer.Ordinal);
}
