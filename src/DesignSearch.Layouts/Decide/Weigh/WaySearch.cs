using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Search.Engine;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>
/// Asks what the cheapest layout of one way is that holds, as a search of its own: the whole search may have left a way early because another
/// was cheaper, and then knows it badly.
/// </summary>
/// <param name="book">Scenario and winters.</param>
/// <param name="threads">Threads to work on; what comes out does not depend on it.</param>
/// <param name="seed">Seed of the search that is weighed.</param>
/// <param name="evaluations">Layouts to simulate for each way, 1 or more.</param>
/// <param name="asked">Told how many ways were searched, after each; null for silence.</param>
internal sealed class WaySearch(TrialBook book, int threads, ulong seed, long evaluations, Action<int>? asked)
{
    // The levels that a way leaves decide what it is, whatever it is called.
    private readonly Dictionary<string, WayFound> known = new(StringComparer.Ordinal);

    /// <summary>The best layout of a way.</summary>
    /// <param name="way">The way.</param>
    public WayFound Best(WayClass way)
    {
        if (!known.TryGetValue(way.Key, out var best))
        {
            known[way.Key] = best = Search([.. book.Scenario.Choices.Select(c => c with { Levels = [.. c.Levels.Where(l => way.Keeps(c.Choice, l))] })]);
            asked?.Invoke(known.Count);
        }

        return best;
    }

    // Frost stays an objective: with frost as a constraint a search this short found worse layouts (docs/decisions/0014-questions.md).
    private WayFound Search(IReadOnlyList<VariedChoice> choices)
    {
        if (choices.Any(c => c.Levels.Count == 0))
            return new(null, true, 0);
        var problem = new LayoutProblem(new LayoutAssessor(book.Scenario with { Choices = choices }, book.Assessor.Winters));
        var settings = new SearchSettings
        {
            Seed = seed,
            MaxEvaluations = evaluations,
            EnumerateUpTo = evaluations,
            RoundsInVain = 1,
            Threads = threads,
            BestByMerit = 0,
        };
        var result = new SearchEngine(problem, settings).Run();
        var best = result.Front.OrderBy(p => p.Evaluation.Objectives[1]).ThenBy(p => p.Evaluation.Objectives[0]).FirstOrDefault();
        return new((best ?? result.NearestMiss) is { } point ? problem.Space.At(point.Point) : null, result.IsExact, result.Evaluations);
    }
}
