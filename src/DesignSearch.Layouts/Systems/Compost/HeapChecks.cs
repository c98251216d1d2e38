using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;

namespace DesignSearch.Layouts.Systems.Compost;

/// <summary>Checks of a compost heap.</summary>
internal static class HeapChecks
{
    // Under a clear sky a pipe and its sleeve cool some kelvins below the air, as a collector does.
    private const double ClearSkyK = 4;

    // What counts as a whole allowance to spare (own choice).
    private const double AmpleK = 20;
    private const double FireM = 5;

    /// <summary>Those that need neither list nor season.</summary>
    public static IEnumerable<Check> Of(HeapPlan heap, Conditions conditions)
    {
        yield return Heat(heap);
        // Nothing moves in them once the core is spent, nor in a power cut, so they take the cold of the night.
        var (night, freezes) = (conditions.LowestOutsideC - ClearSkyK, heap.FreezesAtC);
        yield return CompostRules.Frost.Found(
            night >= freezes, (night - freezes) / AmpleK, CompostWords.Frost(heap.GlycolShare, freezes, night));
        var ridge = conditions.Scenario.Greenhouse.RidgeM;
        yield return CompostRules.Header.Found(heap.HeaderM <= ridge, 1 - (heap.HeaderM / ridge), CompostWords.Header(heap.HeaderM, ridge));
        if (heap.Wrap is { Burns: true })
        {
            var apart = heap.OutdoorM;
            yield return CompostRules.Fire.Found(apart >= FireM, (apart / FireM) - 1, CompostWords.Burns(apart, FireM));
        }
    }

    /// <summary>What it means that nothing stands behind the heap; null where something does, or where no season was run.</summary>
    public static Check? Alone(Conditions conditions, BuiltLayout built)
    {
        if (conditions.Outcomes.Count == 0)
            return null;
        foreach (var system in built.Systems)
        {
            if (system.IsReserve)
                return null;
        }

        var spare = conditions.Outcomes.Min(o => o.LowestAirC) - conditions.Scenario.Greenhouse.FrostLimitC;
        return CompostRules.Alone.Found(true, Math.Clamp(spare / AmpleK, 0, 1), CompostWords.Alone(spare));
    }

    private static Check Heat(HeapPlan heap)
    {
        var weakest = Math.Min(heap.Coil.MaxTemperatureC, heap.Pump.MaxTemperatureC);
        return CompostRules.Heat.Found(
            weakest >= HeapPlan.HottestC, (weakest / HeapPlan.HottestC) - 1, CompostWords.Heat(HeapPlan.HottestC, weakest));
    }
}
