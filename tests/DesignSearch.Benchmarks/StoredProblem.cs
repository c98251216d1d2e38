using DesignSearch.Search;
using DesignSearch.Search.Space;

namespace DesignSearch.Benchmarks;

/// <summary>A problem of which everything is known already, so that nothing is priced or simulated twice.</summary>
/// <param name="inner">The problem.</param>
/// <param name="results">Results of what the screen lets pass.</param>
/// <param name="screened">Of every point the least first objective and by how much the screen refuses it.</param>
internal sealed class StoredProblem(IProblem inner, IReadOnlyDictionary<PointKey, Evaluation> results, IReadOnlyDictionary<PointKey, (double Bound, double Missed)> screened) : IProblem
{
    public IReadOnlyList<Variable> Variables => inner.Variables;

    public IReadOnlyList<string> Objectives => inner.Objectives;

    public IReadOnlyList<string> Constraints { get; } = ["checks"];

    /// <summary>The result of a canonical point; null where the screen refuses it.</summary>
    public Evaluation? Known(double[] point) => results.GetValueOrDefault(SearchSpace.KeyOf(point));

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
    {
        (objectiveBounds[0], violations[0]) = screened[SearchSpace.KeyOf(point)];
        objectiveBounds[1] = 0;
    }

    // A peer that knows no screen is told by how much a refused point misses the checks.
    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        for (var i = 0; i < points.Length; i++)
            evaluations[i] = Known(points[i]) ?? new([0, 0], [screened[SearchSpace.KeyOf(points[i])].Missed]);
    }
}
