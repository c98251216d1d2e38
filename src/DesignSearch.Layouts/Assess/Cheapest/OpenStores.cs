using System.Collections.Concurrent;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Systems.Barrels;
using DesignSearch.Layouts.Systems.DayStore;
using DesignSearch.Search.Proof;
using DesignSearch.Season;
using DesignSearch.Season.Barrels;
using DesignSearch.Season.DayStore;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>
/// Barrels and day-heat stores that are still open, by their ends: least and most water; the most air through the soil with the least and with
/// the most soil round the pipes. None between is better than all of them but by a little.
/// </summary>
/// <param name="assessor">Scenario.</param>
/// <param name="space">Points to layouts.</param>
internal sealed class OpenStores(LayoutAssessor assessor, Problem.LayoutSpace space)
{
    private readonly int[] barrels = [.. BarrelChoices.All.Select(assessor.Scenario.Systems.Choices.IndexOf)];
    private readonly int[] dayStores = [.. DayStoreChoices.All.Select(assessor.Scenario.Systems.Choices.IndexOf)];
    private readonly ConcurrentDictionary<string, IReadOnlyList<BarrelNumbers>> knownBarrels = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, IReadOnlyList<DayStoreNumbers>> knownStores = new(StringComparer.Ordinal);

    /// <summary>Whether one of them is open.</summary>
    public bool IsOpen(LevelSets set) => !Array.TrueForAll(barrels, set.IsSingle) || !Array.TrueForAll(dayStores, set.IsSingle);

    /// <summary>The plant with each of their ends.</summary>
    public IReadOnlyList<Installation> Of(LevelSets set, Installation plant)
    {
        IEnumerable<Installation> plants = [plant];
        if (!Array.TrueForAll(barrels, set.IsSingle))
            plants = plants.SelectMany(p => knownBarrels.GetOrAdd(Key(set, barrels), _ => Barrels(set)).Select(b => p with { Barrels = b }));
        if (plant.Find<DayStoreNumbers>() is not null && !Array.TrueForAll(dayStores, set.IsSingle))
            plants = plants.SelectMany(p => knownStores.GetOrAdd(Key(set, dayStores), _ => DayStores(set)).Select(p.With));
        return [.. plants];
    }

    private static string Key(LevelSets set, int[] places) => string.Join('/', places.Select(i => string.Join(',', set[i].ToArray())));

    private IReadOnlyList<BarrelNumbers> Barrels(LevelSets set)
    {
        BarrelNumbers[] all = [.. Plants(set, barrels).Select(p => p.Barrels).OrderBy(b => b.WaterKg)];
        return [.. new[] { all[0], all[^1] }.Distinct()];
    }

    private IReadOnlyList<DayStoreNumbers> DayStores(LevelSets set)
    {
        DayStoreNumbers[] all = [.. Plants(set, dayStores).Select(p => p.Find<DayStoreNumbers>()!).OrderBy(s => s.RingStoreJPerK)];
        DayStoreNumbers Most(DayStoreNumbers one) => one with
        {
            AirWPerK = all.Max(s => s.AirWPerK),
            FanW = all.Max(s => s.FanW),
            FilmMostJ = all.Max(s => s.FilmMostJ),
        };
        return [.. new[] { Most(all[0]), Most(all[^1]) }.Distinct()];
    }

    private IEnumerable<Installation> Plants(LevelSets set, int[] over) =>
        Combination.Of(set, over).Select(p => LayoutBuilder.Build(assessor.Scenario, space.At(p)).Installation);
}
