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
/// In which order sets of layouts are split: what is built at all, heaps, heat pumps and benches one by one; there a set can be simulated for the
/// first time. Then tank and collector, heater, since its current is most of the cost, what empties the tank in groups of like strength, barrels and
/// day-heat stores, what empties the tank one by one, area, skin, the way from collector to tank.
/// </summary>
internal sealed class SplitOrder
{
    // Releases within this ratio of strengths are simulated together, by the strongest and the weakest of them.
    private const double Alike = 8;
    private const double GroupRatio = 3;

    // Before this stage what empties the tank is split into groups.
    private const int Emptied = 2;

    private readonly LayoutAssessor assessor;
    private readonly IReadOnlyList<Variable> variables;
    private readonly int collector, mount, heater, release;
    private readonly int[] roots, needed, heaters;
    private readonly int[][] stages;
    private readonly int[] priceOnly;

    public SplitOrder(LayoutAssessor assessor, IReadOnlyList<Variable> variables)
    {
        (this.assessor, this.variables) = (assessor, variables);
        var choices = assessor.Scenario.Systems.Choices;
        int[] Places(params IEnumerable<Choice> of) => [.. of.Select(choices.IndexOf)];
        (collector, mount, heater) = (choices.IndexOf(SolarChoices.Collector), choices.IndexOf(SolarChoices.Mount), choices.IndexOf(HeaterChoices.Heater));
        release = choices.IndexOf(SolarChoices.Release);
        var (barrel, dayStore) = (choices.IndexOf(BarrelChoices.Barrel), choices.IndexOf(DayStoreChoices.Pipe));
        heaters = Places(HeaterChoices.Heater, HeaterChoices.SetC);
        bool IsRoot(int i) => choices.All[i] is PartChoice { IsRoot: true };
        priceOnly = [.. Places(SolarChoices.Drive, SolarChoices.ShaftSeal), .. Enumerable.Range(0, choices.All.Count).Where(i => choices.All[i].Under is null && !IsRoot(i))];
        stages =
        [
            Places(SolarChoices.Tank, SolarChoices.Collector),
            heaters,
            [.. Places(BarrelChoices.All), .. Places(DayStoreChoices.All)],
            Places(SolarChoices.ReleaseCount, SolarChoices.Jacket, SolarChoices.Release),
            Places(SolarChoices.CollectorCount),
            Places(SkinChoices.Plain),
            Places(
                SolarChoices.LoopPump, SolarChoices.Protection, SolarChoices.Pipe, SolarChoices.Insulation, SolarChoices.Mount, SolarChoices.TiltDeg,
                SolarChoices.AzimuthDeg, SolarChoices.LimitDeg, SolarChoices.SwitchHours, SolarChoices.Steps),
        ];
        int[] late = [.. stages.SelectMany(s => s), .. priceOnly];
        roots = [.. Enumerable.Range(0, choices.All.Count).Where(i => IsRoot(i) && i != barrel && (i == collector || i == dayStore || !late.Contains(i)))];
        needed = [.. roots.Where(i => i != collector && i != dayStore), .. Enumerable.Range(0, choices.All.Count).Except([.. roots, .. late])];
    }

    /// <summary>Whether releases are so alike that the strongest and the weakest stand for all.</summary>
    public static bool IsNarrow(double strongest, double weakest) => strongest <= Alike * weakest;

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
        {
            if (stage == Emptied && HasCollector(set) && Groups(set) is { Count: > 1 } groups)
                return new([.. groups.Select(g => set.With(release, g, variables))], true);
            at = Open(stages[stage], set);
        }

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

    // Releases from the weakest on, as many together as are of like strength.
    private List<int[]> Groups(LevelSets set)
    {
        var groups = new List<List<int>>();
        double Strength(int level) => ((HeatRelease)assessor.Scenario.Choices[release].Levels[level].Part!).WPerK;
        foreach (var level in set[release].ToArray().OrderBy(Strength))
        {
            if (groups.Count == 0 || Strength(level) > GroupRatio * Strength(groups[^1][0]))
                groups.Add([]);
            groups[^1].Add(level);
        }

        return [.. groups.Select(g => g.Order().ToArray())];
    }

    private static int Open(int[] places, LevelSets set) => places.Where(i => !set.IsSingle(i)).DefaultIfEmpty(-1).First();

    private Func<int, bool> IsNone(int choice) => level => assessor.Scenario.Choices[choice].Levels[level].IsNone;

    private bool Turns(int level) => assessor.Scenario.Choices[mount].Levels[level].Part is CollectorMount { Turning: not TurningKind.Fixed };
}
