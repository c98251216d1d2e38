using DesignSearch.Search.Space;

namespace DesignSearch.Search.Engine;

/// <summary>
/// A multi-objective search under constraints: steady state, elitist, with an unbounded archive. Proposes points in blocks,
/// refuses those that the problem's screen rules out, never evaluates a point twice, and enumerates a space that is small.
/// </summary>
/// <param name="problem">What is searched.</param>
/// <param name="settings">How.</param>
public sealed class SearchEngine(IProblem problem, SearchSettings settings)
{
    private readonly SearchSpace space = new(problem.Variables);

    /// <summary>
    /// Whether every point there is will be gone through, because they are few enough and the budget covers them. A search that does not
    /// proposes the same points in the same order whatever its budget, so it can be taken up with a larger one.
    /// </summary>
    public bool GoesThroughAll => space.HoldsAtMost(Math.Min(settings.EnumerateUpTo, settings.MaxEvaluations));

    /// <summary>Searches until the budget, the caller or the problem ends it.</summary>
    /// <param name="progress">Told after every block; null for silence.</param>
    /// <param name="log">Given every freshly evaluated stretch; null for none.</param>
    /// <param name="replay">
    /// What an earlier run of the same problem, settings and seed evaluated, in its order: taken instead of evaluating, so that
    /// the resumed run ends like the unbroken one.
    /// </param>
    /// <param name="cancel">Ends the search after the block in hand; what was found is returned.</param>
    /// <exception cref="InvalidDataException">The replay holds a point other than the one that the search came to.</exception>
    public SearchResult Run(IProgress<SearchProgress>? progress = null, ISearchLog? log = null,
        IEnumerable<(double[] Point, Evaluation Evaluation)>? replay = null, CancellationToken cancel = default)
    {
        settings.Check();
        using var source = (replay ?? []).GetEnumerator();
        using var evaluator = new BlockEvaluator(problem, settings.Threads, source, log);
        return new EngineRun(problem, space, settings, evaluator, progress, cancel).ToTheEnd(GoesThroughAll);
    }
}
