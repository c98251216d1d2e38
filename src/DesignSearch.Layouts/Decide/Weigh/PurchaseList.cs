using DesignSearch.Layouts.Decide.Judging;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Reads off the front what more money buys.</summary>
internal static class PurchaseList
{
    private const decimal UsualStep = 100;
    private const int MostRows = 60;

    /// <summary>Sum by which the list climbs: 100, or a round multiple where a large budget would make it long.</summary>
    public static decimal Step(decimal budget)
    {
        var step = UsualStep;
        for (var i = 0; budget / step > MostRows; i++)
            step *= i % 3 == 1 ? 2.5m : 2;
        return step;
    }

    /// <summary>The list; a sum that buys nothing better has no row.</summary>
    public static IReadOnlyList<Purchase> Of(Judgement judgement, decimal budget)
    {
        var front = judgement.Front.Select(r => r == 0 ? judgement.BareHouse : judgement.Ranking[r - 1]).Append(judgement.BareHouse).ToList();
        var rows = new List<Purchase>();
        var last = judgement.BareHouse.FrostDegreeHoursKh;
        for (var sum = 0m; ; sum += Step(budget))
        {
            var upTo = Math.Min(sum, budget);
            var best = front.Where(l => l.BuildPrice <= upTo).OrderBy(l => l.FrostDegreeHoursKh).ThenBy(l => l.LifeCost).First();
            if (rows.Count == 0 || rows[^1].Rank != best.Rank)
                rows.Add(new(upTo, best.Rank, best.Title, best.BuildPrice, best.FrostDegreeHoursKh, best.WorstFrostHours, last - best.FrostDegreeHoursKh));
            last = best.FrostDegreeHoursKh;
            if (upTo == budget)
                return rows;
        }
    }
}
