using System.Collections.Concurrent;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Skin;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Assess.Problem;

/// <summary>
/// The house with every number of its skin at its best among some levels: more resistance, more light, less leakage, less loss at the edge and
/// less wind never make a house colder, nor its heater hungrier, whatever else is chosen. Tests on random sets hold it; it is not a theorem.
/// </summary>
/// <param name="scenario">The house and what may be chosen.</param>
internal sealed class BestSkin(Scenario scenario)
{
    private readonly ConcurrentDictionary<string, HouseNumbers> known = new(StringComparer.Ordinal);

    /// <summary>The numbers.</summary>
    /// <param name="levels">Levels left of each choice of the skin, in their order.</param>
    public HouseNumbers Of(IReadOnlyList<IReadOnlyList<int>> levels) =>
        known.GetOrAdd(string.Join('/', levels.Select(l => string.Join(',', l))), _ => Best(levels));

    private HouseNumbers Best(IReadOnlyList<IReadOnlyList<int>> levels)
    {
        HouseNumbers? best = null;
        foreach (var layout in Combinations(levels, 0, Layout.Bare(scenario.Systems.Choices)))
        {
            var house = SkinSystem.Of(layout).Numbers(scenario.Greenhouse);
            best = best is null ? house : best with
            {
                LiningResistanceM2KPerW = Math.Max(best.LiningResistanceM2KPerW, house.LiningResistanceM2KPerW),
                NightCoverResistanceM2KPerW = Math.Max(best.NightCoverResistanceM2KPerW, house.NightCoverResistanceM2KPerW),
                NightCoverDrawnBy = best.NightCoverDrawnBy | house.NightCoverDrawnBy,
                LiningTransmittance = Math.Max(best.LiningTransmittance, house.LiningTransmittance),
                EdgeLossWPerMK = Math.Min(best.EdgeLossWPerMK, house.EdgeLossWPerMK),
                AirChangesPerHour = Math.Min(best.AirChangesPerHour, house.AirChangesPerHour),
                AirChangesPerHourPerMPerS = Math.Min(best.AirChangesPerHourPerMPerS, house.AirChangesPerHourPerMPerS),
            };
        }

        return scenario.Greenhouse.Fit?.On(best!) ?? best!;
    }

    private IEnumerable<Layout> Combinations(IReadOnlyList<IReadOnlyList<int>> levels, int from, Layout layout)
    {
        if (from == levels.Count)
            return [layout];
        var choice = SkinChoices.All[from];
        return levels[from].SelectMany(l => Combinations(levels, from + 1, layout.With(choice, scenario.LevelsOf(choice)[l])));
    }
}
