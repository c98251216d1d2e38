using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Barrels;
using DesignSearch.Layouts.Systems.DayStore;
using DesignSearch.Layouts.Systems.Heaters;
using DesignSearch.Layouts.Systems.Skin;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Parts.Solar;
using DesignSearch.Search;
using DesignSearch.Search.Proof;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>
/// In which order sets of layouts are split: what is built at all, heaps, heat pumps, benches and what empties the tank one by one; there a set can be
/// simulated for the first time. Then what tells most of cost and frost at once: heater, lining, collectors, barrels and tank, the rest of the skin and the
/// sleeves of the pipe, stores of the day's heat, the way from collector to tank. The order was tried on the example: docs/decisions/0021-intervals.md.
/// </summary>
internal sealed class SplitOrder
{
    private readonly LayoutAssessor assessor;
    private readonly IReadOnlyList<Variable> variables;
    private readonly int collector, mount, heater;
    private readonly int[] roots, needed, heaters;
    private readonly int[][] stages;
    private readonly int[] priceOnly;

    public SplitOrder(LayoutAssessor assessor, IReadOnlyList<Variable> variables)
    {
        (this.assessor, this.variables) = (assessor, variables);
        var choices = assessor.Scenario.Systems.Choices;
        int[] Places(params IEnumerable<Choice> of) => [.. of.Select(choices.IndexOf)];
        (collector, mount, heater) = (choices.IndexOf(SolarChoices.Collector), choices.IndexOf(SolarChoices.Mount), choices.IndexOf(HeaterChoices.Heater));
        var (barrel, dayStore) = (choices.IndexOf(BarrelChoices.Barrel), choices.IndexOf(DayStoreChoices.Pipe));
        heaters = Places(HeaterChoices.Heater, HeaterChoices.SetC);
        bool IsRoot(int i) => choices.All[i] is PartChoice { IsRoot: true };
        priceOnly = [.. Places(SolarChoices.Drive, SolarChoices.ShaftSeal), .. Enumerable.Range(0, choices.All.Count).Where(i => choices.All[i].Under is null && !IsRoot(i))];
        stages =
        [
            heaters,
            Places(SkinChoices.Lining, SolarChoices.Collector, SolarChoices.CollectorCount, BarrelChoices.Barrel, BarrelChoices.Count, SolarChoices.Tank),
            Places(SkinChoices.Sealing, SkinChoices.PerimeterBoard, SolarChoices.Insulation, SkinChoices.WindBreak),
            Places([.. DayStoreChoices.All, SolarChoices.Jacket]),
            Places(
                SolarChoices.Pipe, SolarChoices.Protection, SolarChoices.LoopPump, SolarChoices.Mount, SolarChoices.TiltDeg,
                SolarChoices.AzimuthDeg, SolarChoices.LimitDeg, SolarChoices.SwitchHours, SolarChoices.Steps),
        ];
        int[] late = [.. stages.SelectMany(s => s), .. priceOnly];
        roots = [.. Enumerable.Range(0, choices.All.Count).Where(i => IsRoot(i) && i != barrel && (i == collector || i == dayStore || !late.Contains(i)))];
        needed = [.. roots.Where(i => i != collector && i != dayStore), .. Enumerable.Range(0, choices.All.Count).Except([.. roots, .. late])];
    }

    /// <summary>Whether a set of layouts can be simulated as a whole.</summary>
    public bool CanSimulate(LevelSets set) =>
        Array.TrueForAll(needed, set.IsSingle) && Presence(set) < 0 && (HasCollector(set) ? !MayTurnOrNot(set) : IsOneHeater(set));

    /// <summary>Splits a set.</summary>
    public Branching Split(LevelSets set)
    {
        // Whether it is built at all, then what it is.
        if (Presence(set) is >= 0 and var root)
            return new([.. set[root].ToArray().GroupBy(IsNone(root)).Select(g => set.With(root, [.. g], variables))], true);
        if (HasCollector(set) && MayTurnOrNot(set))
            return new([.. set[mount].ToArray().GroupBy(Turns).OrderBy(g => g.Key).Select(g => set.With(mount, [.. g], variables))], true);
        var at = Open(needed, set);
        if (at < 0 && !HasCollector(set))
            at = Open(heaters, set);
        for (var stage = 0; at < 0 && stage < stages.Length; stage++)
            at = Open(stages[stage], set);

        var shows = at >= 0;
        if (at < 0)
            at = Open(priceOnly, set);
        return new([.. set[at].ToArray().Select(l => set.With(at, [l], variables))], shows);
    }

    /// <summary>Whether every layout of a set has the same heater on the same set point.</summary>
    public bool IsOneHeater(LevelSets set) => Array.TrueForAll(heaters, set.IsSingle);

    private bool HasCollector(LevelSets set) => !set[collector].ToArray().Any(IsNone(collector));

    private bool MayTurnOrNot(LevelSets set) => set[mount].ToArray().Select(Turns).Distinct().Count() > 1;

    // A root of which it is open whether there is one.
    private int Presence(LevelSets set)
    {
        int[] all = [heater, .. roots];
        return all.Where(i => !set.IsSingle(i) && set[i].ToArray().Any(IsNone(i))).DefaultIfEmpty(-1).First();
    }

    private static int Open(int[] places, LevelSets set) => places.Where(i => !set.IsSingle(i)).DefaultIfEmpty(-1).First();

    private Func<int, bool> IsNone(int choice) => level => assessor.Scenario.Choices[choice].Levels[level].IsNone;

    private bool Turns(int level) => assessor.Scenario.Choices[mount].Levels[level].Part is CollectorMount { Turning: not TurningKind.Fixed };
}
