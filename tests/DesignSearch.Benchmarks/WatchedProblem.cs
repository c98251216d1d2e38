using DesignSearch.Search;

namespace DesignSearch.Benchmarks;

/// <summary>Tells each evaluation as it comes.</summary>
internal sealed class WatchedProblem(IProblem inner, Action<double[], Evaluation> seen) : IProblem
{
    public IReadOnlyList<Variable> Variables => inner.Variables;

    public IReadOnlyList<string> Objectives => inner.Objectives;

    public IReadOnlyList<string> Constraints => inner.Constraints;

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations) => inner.Screen(point, objectiveBounds, violations);

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        inner.Evaluate(points, evaluations);
        for (var i = 0; i < points.Length; i++)
            seen(points[i], evaluations[i]);
    }
}
