using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>
/// Looks for the cheapest layout that holds the design winters and is sure enough in others: first among what was simulated, by cost; then one choice away from what
/// was found, until nothing cheaper is.
/// </summary>
/// <param name="book">Simulates the design winters.</param>
/// <param name="chances">Counts the draws.</param>
/// <param name="isExact">True when every layout was simulated, so that nothing is left one choice away.</param>
internal sealed class SureSearch(TrialBook book, ChanceBook chances, bool isExact)
{
    private const int Batch = 16;

    // Sureness grows with cost, so that few layouts lie between the cheapest that holds and the cheapest that is sure; where more do, the warmest of the rest are
    // asked, but for a search that tried everything: its answer is to be the cheapest, and not one that was found.
    private const int MostWalked = 320;
    private const int MostWarmest = 48;
    private const int MostRounds = 8;
    private const int WarmestAsked = 12;

    /// <summary>The cheapest that fails in so many draws at most.</summary>
    /// <param name="holders">Layouts that hold the design winters, the cheapest first.</param>
    /// <param name="near">Layouts to look beside from the beginning.</param>
    /// <param name="mayFail">In how many draws it may fail.</param>
    /// <returns>Null where none was found.</returns>
    public Trial? Cheapest(IReadOnlyList<Layout> holders, IEnumerable<Trial> near, int mayFail)
    {
        if (isExact)
            return Walk(holders, mayFail);
        var best = Walk(holders.Take(MostWalked), mayFail) ?? Warmest(holders.Skip(MostWalked), mayFail);
        var queue = new Queue<Trial>(near.Concat(best is null ? [] : [best]).DistinctBy(t => t.Layout));
        for (var round = 0; queue.Count > 0 && round < MostRounds; round++)
        {
            if (Cheaper(Beside(queue.Dequeue(), best?.Figures.LifeCost), best, mayFail) is not { } better)
                continue;
            best = better;
            queue.Enqueue(better);
        }

        return best;
    }

    /// <summary>The surest that is found from one layout on, one choice after another: fewest draws that fail, then the warmest coldest hour.</summary>
    /// <param name="from">Where to begin; it went through all draws.</param>
    public Trial Surest(Trial from)
    {
        var best = from;
        for (var round = 0; round < MostRounds && !isExact; round++)
        {
            var warmest = Beside(best, null).OrderByDescending(t => t.Figures.LowestAirC).ThenBy(t => t.Figures.LifeCost).Take(WarmestAsked).ToList();
            var next = Surest(chances.Sure(warmest, chances.Failed(best)).Append(best));
            if (next == best)
                break;
            best = next;
        }

        return best;
    }

    /// <summary>The surest of some that went through all draws.</summary>
    public Trial Surest(IEnumerable<Trial> layouts) =>
        layouts.MinBy(t => (chances.Failed(t), -chances.LowestAirC(t), t.Figures.LifeCost))!;

    private Trial? Walk(IEnumerable<Layout> holders, int mayFail)
    {
        foreach (var batch in holders.Chunk(Batch))
        {
            if (chances.Sure([.. book.Of(batch).Where(t => t.Holds)], mayFail) is [var first, ..])
                return first;
        }

        return null;
    }

    private Trial? Warmest(IEnumerable<Layout> holders, int mayFail)
    {
        var rest = holders.ToList();
        var every = Math.Max(1, rest.Count / MostWarmest);
        var asked = book.Of([.. rest.Where((_, i) => i % every == 0)]).Where(t => t.Holds).OrderByDescending(t => t.Figures.LowestAirC).Take(Batch).ToList();
        return chances.Sure(asked, mayFail).MinBy(t => t.Figures.LifeCost);
    }

    private Trial? Cheaper(IReadOnlyList<Trial> beside, Trial? best, int mayFail)
    {
        foreach (var batch in beside.Where(t => best is null || t.Figures.LifeCost < best.Figures.LifeCost).OrderBy(t => t.Figures.LifeCost).Chunk(Batch))
        {
            if (chances.Sure(batch, mayFail) is [var first, ..])
                return first;
        }

        return null;
    }

    // Layouts one choice away that hold, and whose parts alone do not cost as much as they may.
    private IReadOnlyList<Trial> Beside(Trial layout, decimal? under)
    {
        var worth = new List<Layout>();
        foreach (var (_, other) in Neighbours.All(book.Scenario, layout.Layout))
        {
            var priced = book.Assessor.Price(other);
            if (!(priced.BuildPrice + priced.Replacements >= under) && book.Assessor.Checks(priced, []).All(c => c.Passed))
                worth.Add(other);
        }

        return [.. book.Of(worth).Where(t => t.Holds)];
    }
}
