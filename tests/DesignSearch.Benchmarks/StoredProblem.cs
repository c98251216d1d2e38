using DesignSearch.Search;

namespace DesignSearch.Benchmarks;

/// <summary>A problem of which every result that its screen lets pass is known already, so that nothing is simulated twice.</summary>
internal sealed class StoredProblem(IProblem inner, IReadOnlyDictionary<PointKey, Evaluation> results) : IProblem
{
    public IReadOnlyList<Variable> Variables => inner.Variables;

    public IReadOnlyList<string> Objectives => inner.Objectives;

    public IReadOnlyList<string> Constraints { get; } = ["checks"];

    /// <summary>The result of a canonical point; null where the screen refuses it.</summary>
    public Evaluation? Known(double[] point) => results.GetValueOrDefault(SearchSpace.KeyOf(point));

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
    {
        var full = new double[inner.Constraints.Count];
        inner.Screen(point, objectiveBounds, full);
        violations[0] = full.Sum(v => Math.Max(0, v));
    }

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        for (var i = 0; i < points.Length; i++)
            evaluations[i] = Known(points[i]) ?? Refused(points[i]);
    }

    // A peer that knows no screen: told how far the checks are missed, and nothing else that would help.
    private Evaluation Refused(double[] point)
    {
        double[] bounds = new double[Objectives.Count], violations = [0];
        Screen(point, bounds, violations);
        return new([.. bounds.Select(b => double.IsFinite(b) ? b : 0)], violations);
    }
}
