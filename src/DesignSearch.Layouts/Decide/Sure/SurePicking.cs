using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>Picks layouts by how sure they are: chosen by one set of draws, told by another.</summary>
/// <param name="book">Simulates the design winters.</param>
/// <param name="threads">Threads to work on; what comes out does not depend on it.</param>
/// <param name="unseen">Winters to tell by.</param>
internal sealed class SurePicking(TrialBook book, int threads, IReadOnlyList<Winter> unseen)
{
    // Far from the seeds of the design winters and of the winters that tell.
    private const ulong ChoosingSeeds = 2_000_003;
    private const int Asked = 16;
    private const int Third = 3;
    private const double Rounding = 1e-9;

    /// <summary>Picks.</summary>
    /// <param name="holders">Layouts that hold the design winters, the cheapest first; one at least.</param>
    /// <param name="isExact">True when every layout was simulated.</param>
    public SureFound Of(IReadOnlyList<Layout> holders, bool isExact)
    {
        var (scenario, count) = (book.Scenario, book.Scenario.Search.UnseenWinters);
        var mayFail = (int)Math.Floor((1 - scenario.Search.Certainty) * count + Rounding);
        var bare = LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices));
        var seed = scenario.Climate.Seed + ChoosingSeeds;
        var chances = new ChanceBook(new(scenario, DesignWinters.Drawn(scenario, count, seed), seed, threads), bare, threads);
        var search = new SureSearch(book, chances, isExact);
        var cheapest = book.Of(holders[0]);
        var first = search.Cheapest(holders, [cheapest], mayFail)
            ?? search.Surest(search.Surest(chances.Sure(book.Of([.. holders.Take(Asked)]), count)));
        var surer = chances.Failed(first) > 0
            ? search.Cheapest([.. holders.SkipWhile(l => !l.Equals(first.Layout)).Skip(1)], [first], chances.Failed(first) / Third)
            : null;
        var most = search.Surest(surer ?? first);
        var telling = new DoubtDraws(scenario, unseen, UnseenJudging.Seed(scenario), threads);
        Trial[] named = [.. new[] { cheapest, first, surer, most }.OfType<Trial>().DistinctBy(t => t.Layout)];
        return new(
            first.Layout,
            chances.Failed(first) <= mayFail,
            surer?.Layout,
            most.Layout,
            named.ToDictionary(t => t.Layout, t => Chance.Counted(telling.All(t.Priced.Built, threads).Count(o => o.FrostHours == 0), count)),
            [.. named.SelectMany(t => Drawn(t.Priced.Built)).Append(Unknowns.Sky).Append(Unknowns.Soil(scenario)).DistinctBy(f => f.Name)]);
    }

    private static IEnumerable<DoubtfulFigure> Drawn(BuiltLayout built) =>
        Unknowns.Of(built).Select(d => d.Figure).Concat(Forgetting.Matters(built) ? [Forgetting.Figure] : []);
}
