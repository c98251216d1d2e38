using DesignSearch.Search;

namespace DesignSearch.Layouts.Assess.Problem;

/// <summary>The search for the cheapest layout that holds: life cost alone, and frost is a constraint like any check.</summary>
/// <param name="all">Prices, checks and simulates.</param>
/// <param name="frostOfBareKh">Frost of the bare house [K·h], more than 0, against which frost is counted.</param>
internal sealed class HoldingProblem(LayoutProblem all, double frostOfBareKh) : ISharingProblem, IEarlyScreen
{
    // A layout with an hour of frost misses by more than rounding does.
    private const double LeastMiss = 0.001;
    private readonly int objectives = all.Objectives.Count;

    /// <summary>The choices as variables.</summary>
    public LayoutSpace Space => all.Space;

    public IReadOnlyList<Variable> Variables => all.Variables;

    public IReadOnlyList<string> Objectives { get; } = [all.Objectives[0]];

    public IReadOnlyList<string> Constraints { get; } = [.. all.Constraints, all.Objectives[1]];

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations) =>
        ScreenUntil(point, objectiveBounds, violations, double.PositiveInfinity);

    public bool ScreenUntil(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations, double enough)
    {
        Span<double> bounds = stackalloc double[objectives];
        bounds[0] = objectiveBounds[0];
        var went = all.ScreenUntil(point, bounds, violations[..^1], enough);
        objectiveBounds[0] = bounds[0];
        return went;
    }

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations) => Evaluate(points, evaluations, 1);

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations, int threads)
    {
        all.Evaluate(points, evaluations, threads);
        for (var i = 0; i < evaluations.Length; i++)
        {
            var (cost, frostKh) = (evaluations[i].Objectives[0], evaluations[i].Objectives[1]);
            var miss = frostKh > 0 ? LeastMiss + (frostKh / frostOfBareKh) : 0;
            evaluations[i] = new([cost], [.. evaluations[i].Violations, miss], evaluations[i].Merit);
        }
    }
}
