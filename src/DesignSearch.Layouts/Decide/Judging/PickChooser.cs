namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>Ranks layouts and picks three, as the definitions say.</summary>
public static class PickChooser
{
    /// <summary>Layouts that hold first, by score; then the others that pass every check, by score; ties by life cost, then by slug.</summary>
    /// <param name="layouts">Judged layouts; those that fail a check are left out.</param>
    /// <param name="most">How many to keep; some are always kept.</param>
    /// <param name="isKept">Says which are kept whatever their place.</param>
    /// <returns>The same layouts with their ranks, from 1.</returns>
    public static IReadOnlyList<(JudgedLayout Layout, int Rank)> Rank(IEnumerable<JudgedLayout> layouts, int most, Func<JudgedLayout, bool> isKept)
    {
        var ordered = layouts.Where(l => l.PassesChecks)
            .OrderByDescending(l => l.Holds).ThenByDescending(l => l.Score).ThenBy(l => l.LifeCost).ThenBy(l => l.Slug, StringComparer.Ordinal)
            .ToList();
        return [.. ordered.Where((l, i) => i < most || isKept(l)).Select((l, i) => (l, i + 1))];
    }

    /// <summary>The picks of a ranking.</summary>
    /// <param name="ranking">Ranked layouts, all passing every check.</param>
    /// <param name="sure">Ranks of the cheapest that is sure enough and of the surest; null where sureness was not asked for.</param>
    public static Picks Choose(IReadOnlyList<JudgedLayout> ranking, (int First, int Most)? sure)
    {
        var cheapest = ranking.Where(l => l.Holds).OrderBy(l => l.LifeCost).ThenBy(l => l.Rank).FirstOrDefault()?.Rank;
        return new(
            sure?.First ?? cheapest,
            cheapest,
            ranking.OrderByDescending(l => l.Score).ThenBy(l => l.Rank).FirstOrDefault()?.Rank,
            sure?.Most ?? ranking.OrderBy(l => l.FrostDegreeHoursKh).ThenByDescending(l => l.LowestAirC).ThenBy(l => l.LifeCost).FirstOrDefault()?.Rank);
    }
}
