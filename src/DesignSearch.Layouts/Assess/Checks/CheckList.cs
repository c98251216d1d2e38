using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;

namespace DesignSearch.Layouts.Assess.Checks;

/// <summary>The rules a layout must meet. Those that need no season are refused before any simulation.</summary>
public static class CheckList
{
    /// <summary>By how much a layout misses its parts that lacks some.</summary>
    internal const double PartsMissed = 1;

    private const double LeastViolation = 1e-6;
    private const double VentsApartK = 3;

    /// <summary>Every check of a layout.</summary>
    /// <param name="conditions">What they are asked under.</param>
    /// <param name="priced">The layout worked out and priced.</param>
    /// <returns>The checks, the tightest first.</returns>
    public static IReadOnlyList<Check> Of(Conditions conditions, PricedLayout priced) =>
        [.. Unsorted(conditions, priced).OrderBy(c => c.Margin).ThenBy(c => c.Id, StringComparer.Ordinal)];

    /// <summary>The same checks as they come.</summary>
    internal static List<Check> Unsorted(Conditions conditions, PricedLayout priced)
    {
        var (built, money) = (priced.Built, conditions.Scenario.Money);
        var checks = BeforeTheList(conditions, built.Systems);
        var margin = money.Budget > 0 ? (double)(1 - (priced.BuildPrice / money.Budget)) : priced.BuildPrice > 0 ? -1 : 0;
        checks.Add(PlantRules.Budget.Found(priced.BuildPrice <= money.Budget, margin, PlantWords.Budget(priced.BuildPrice, money)));
        if (money.BuildHours is { } hours)
            checks.Add(PlantRules.BuildHours.Limit(priced.LabourHours, hours, "h"));
        if (built.Missing.Count > 0)
            checks.Add(PlantRules.Parts.Found(false, -PartsMissed, PlantWords.Missing(built.Missing)));
        foreach (var system in built.Systems)
            checks.AddRange(system.ListChecks(conditions, built));
        DutyChecks.Add(built.Parts, checks);
        if (conditions.Outcomes.Sum(o => o.PowerCutHours) is > 0 and var cut)
            checks.Add(PowerCut(conditions, cut));
        return checks;
    }

    /// <summary>The checks that need neither list nor supply.</summary>
    internal static List<Check> BeforeTheList(Conditions conditions, IReadOnlyList<DesignedSystem> systems)
    {
        var checks = new List<Check>(conditions.Scenario.Systems.Rules.Count);
        var (floor, load, heatsTo) = (0.0, default(FloorLoad?), double.NegativeInfinity);
        foreach (var system in systems)
        {
            floor += system.StoreFloorM2;
            heatsTo = Math.Max(heatsTo, system.HeatsToC);
            if (system.FloorLoad is { } own && !(load?.KgPerM2 >= own.KgPerM2))
                load = own;
        }

        if (floor > 0)
            checks.Add(PlantRules.StoreFloor.Limit(floor, conditions.Scenario.Site.StoreFloorM2, "m²"));
        if (load is { } heaviest)
        {
            var bears = conditions.Scenario.Site.FloorBearsKgPerM2;
            var words = PlantWords.FloorLoad(heaviest, bears);
            checks.Add(PlantRules.FloorLoad.Found(heaviest.KgPerM2 <= bears, 1 - (heaviest.KgPerM2 / bears), words));
        }

        var vents = BareHouse.Numbers(conditions.Scenario.Greenhouse).VentAboveC;
        if (heatsTo > vents - VentsApartK)
        {
            var words = PlantWords.Vents(heatsTo, vents, VentsApartK);
            checks.Add(PlantRules.Vents.Found(false, (vents - VentsApartK - heatsTo) / VentsApartK, words));
        }

        foreach (var system in systems)
            checks.AddRange(system.Checks(conditions));
        return checks;
    }

    /// <summary>Fills the violations of a layout by the order of the systems' rules: 0 where a check is met, else the share by which it is missed.</summary>
    public static void Violations(SystemSet systems, IReadOnlyList<Check> checks, Span<double> violations)
    {
        ArgumentNullException.ThrowIfNull(systems);
        ArgumentNullException.ThrowIfNull(checks);
        violations.Clear();
        foreach (var check in checks)
        {
            if (!check.Passed)
                violations[systems.PlaceOf(check.Id)] = Math.Max(LeastViolation, -check.Margin);
        }
    }

    // Told, not refused: frost in the cut counts as frost like any other.
    private static Check PowerCut(Conditions conditions, int cut)
    {
        var above = cut - conditions.Outcomes.Sum(o => o.PowerCutFrostHours);
        var lowest = conditions.Outcomes.Where(o => o.PowerCutHours > 0).Min(o => o.PowerCutLowestAirC);
        return PlantRules.PowerCut.Found(true, (double)above / cut, PlantWords.PowerCut(cut, above, lowest, conditions.Scenario.Greenhouse.FrostLimitC));
    }
}
