using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Parts.Benches;
using DesignSearch.Parts.Small;
using DesignSearch.Season.Benches;

namespace DesignSearch.Layouts.Design.Sizing;

/// <summary>The bench under fleece, where the scenario says that one is enough.</summary>
internal static class BenchBuilding
{
    private const string System = "bench";

    public static (BenchNumbers Numbers, Bench? Bench) Build(Scenario scenario, Layout layout, Needs needs)
    {
        var area = scenario.Greenhouse.BenchM2;
        if (area <= 0 || !needs.Catalogue.TryFind<Bench>(layout[ChoiceTable.BenchKey].Id, out var bench))
            return (BenchNumbers.None, null);
        var watts = bench.WattsPerM2 * area;
        needs.Add(bench, area, System, watts > 0 ? "Warms the plants and not the house." : "Slows the plants' cooling through the night.", "all plants that must live stand on it");
        if (watts > 0)
            Thermostat(bench.Volts, watts / bench.Volts, needs);
        return (new BenchNumbers(area, bench.FleeceWPerM2K, watts, layout["bench_set_c"].Number), bench);
    }

    /// <summary>Whether a thermostat of the catalogue bears the current of a bench by itself.</summary>
    public static bool SwitchesDirectly(double volts, double amperes, Needs needs) =>
        volts >= SupplyPlan.MainsVolts || needs.Shelf.Small(SmallPartRole.Thermostat).Any(p => p.Volts == volts && p.RatedA >= amperes);

    private static void Thermostat(double volts, double amperes, Needs needs)
    {
        var direct = SwitchesDirectly(volts, amperes, needs);
        needs.Small(SmallPartRole.Thermostat, 1, System, "Starts the bench's heat when it falls to its setting.", "its feeler among the pots, under the fleece", volts, direct ? amperes : 0);
        if (!direct)
            needs.Small(SmallPartRole.Relay, 1, System, "Switches the bench, whose current is more than the thermostat bears.", "in the control box", volts, amperes);
    }
}
