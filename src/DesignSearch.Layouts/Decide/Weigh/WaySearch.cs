using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Parts.Solar;
using DesignSearch.Search.Engine;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>Searches one way by itself: the whole search may have left a way early because another was cheaper, and then knows it badly.</summary>
/// <param name="book">Scenario and winters.</param>
/// <param name="threads">Threads to work on; what comes out does not depend on it.</param>
/// <param name="evaluations">Layouts to simulate for each way, 1 or more.</param>
internal sealed class WaySearch(TrialBook book, int threads, long evaluations)
{
    private readonly Dictionary<string, Layout?> known = new(StringComparer.Ordinal);

    /// <summary>The best layout without any collector; null where nothing passes every check.</summary>
    public Layout? WithoutCollector() => Best("", book.Scenario.Choices.Select(c =>
        c.Choice == SolarChoices.Collector ? c with { Levels = [.. c.Levels.Where(l => l.IsNone)] } : c));

    /// <summary>The best layout whose collector turns, or stands, in one way; null where nothing passes every check.</summary>
    public Layout? Of(TurningKind kind) => Best(kind.ToString(), book.Scenario.Choices.Select(c =>
        c.Choice == SolarChoices.Collector ? c with { Levels = [.. c.Levels.Where(l => !l.IsNone)] }
        : c.Choice == SolarChoices.Mount ? c with { Levels = [.. c.Levels.Where(l => l.Part is CollectorMount m && m.Turning == kind)] }
        : c));

    private Layout? Best(string way, IEnumerable<VariedChoice> choices)
    {
        if (!known.TryGetValue(way, out var best))
            known[way] = best = Search([.. choices]);
        return best;
    }

    private Layout? Search(IReadOnlyList<VariedChoice> choices)
    {
        if (choices.Any(c => c.Levels.Count == 0))
            return null;
        var problem = new LayoutProblem(new LayoutAssessor(book.Scenario with { Choices = choices }, book.Assessor.Winters));
        var settings = new SearchSettings { Seed = book.Scenario.Search.Seed, MaxEvaluations = evaluations, Threads = threads, BestByMerit = 0 };
        var front = new SearchEngine(problem, settings).Run().Front;
        return front.Where(p => p.Evaluation.TotalViolation == 0)
            .OrderBy(p => p.Evaluation.Objectives[1])
            .ThenBy(p => p.Evaluation.Objectives[0])
            .Select(p => problem.Space.At(p.Point))
            .FirstOrDefault();
    }
}
