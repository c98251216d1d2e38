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
/// <param name="evaluations">Layouts to simulate for each way, over all beginnings, 1 or more.</param>
internal sealed class WaySearch(TrialBook book, int threads, ulong seed, long evaluations)
{
    private const int Beginnings = 2;
    private const ulong SeedStep = 0x9E3779B97F4A7C15;

    // The levels that a way leaves decide what it is, whatever it is called.
    private readonly Dictionary<string, WayFound> known = new(StringComparer.Ordinal);

    /// <summary>The best layout of a way.</summary>
    /// <param name="way">A name of its own.</param>
    /// <param name="keeps">Whether a level of a choice is of the way.</param>
    public WayFound Best(string way, Func<Choice, ChoiceValue, bool> keeps)
    {
        if (!known.TryGetValue(way, out var best))
            known[way] = best = Search([.. book.Scenario.Choices.Select(c => c with { Levels = [.. c.Levels.Where(l => keeps(c.Choice, l))] })]);
        return best;
    }

    private WayFound Search(IReadOnlyList<VariedChoice> choices)
    {
        if (choices.Any(c => c.Levels.Count == 0))
            return new(null, true, 0);
        var assessor = new LayoutAssessor(book.Scenario with { Choices = choices }, book.Assessor.Winters);
        var bareKh = Math.Max(1, book.Of(Layout.Bare(book.Scenario.Systems.Choices)).Figures.FrostDegreeHoursKh);
        var problem = new HoldingProblem(new LayoutProblem(assessor), bareKh);
        var (found, tried) = ((Trial?)null, 0L);
        for (var beginning = 0; beginning < Beginnings; beginning++)
        {
            var settings = new SearchSettings
            {
                Seed = seed + ((ulong)beginning * SeedStep),
                MaxEvaluations = beginning == 0 ? evaluations - (evaluations / Beginnings) : Math.Max(1, evaluations / Beginnings),
                EnumerateUpTo = evaluations,
                Threads = threads,
                BestByMerit = 0,
            };
            var result = new SearchEngine(problem, settings).Run();
            tried += result.Evaluations;
            var point = result.Front.Count > 0 ? result.Front[0] : result.NearestMiss;
            if (point is not null && book.Of(problem.Space.At(point.Point)) is var trial && (found is null || trial.Beats(found)))
                found = trial;
            if (result.IsExact)
                return new(found?.Layout, true, tried);
        }

        return new(found?.Layout, false, tried);
    }
}
