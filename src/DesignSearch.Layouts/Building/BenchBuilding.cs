using DesignSearch.Parts;
using DesignSearch.Season;

namespace DesignSearch.Layouts;

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
            needs.Small(SmallPartRole.Thermostat, 1, System, "Starts the bench's heat when it falls to its setting.", "its feeler among the pots, under the fleece", bench.Volts >= SupplyPlan.MainsVolts ? SupplyPlan.MainsVolts : bench.Volts, watts / bench.Volts);
        return (new BenchNumbers(area, bench.FleeceWPerM2K, watts, layout["bench_set_c"].Number), bench);
    }
}
