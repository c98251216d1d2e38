using System.Diagnostics;
using DesignSearch.Search;

namespace DesignSearch.Benchmarks;

/// <summary>Counts the time that a problem itself takes, so that the engine's own can be told.</summary>
internal sealed class TimedProblem(IProblem inner) : IProblem
{
    private long ticks;

    public double Micros => ticks * 1e6 / Stopwatch.Frequency;

    public IReadOnlyList<Variable> Variables => inner.Variables;

    public IReadOnlyList<string> Objectives => inner.Objectives;

    public IReadOnlyList<string> Constraints => inner.Constraints;

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations) =>
        inner.Screen(point, objectiveBounds, violations);

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        var start = Stopwatch.GetTimestamp();
        inner.Evaluate(points, evaluations);
        ticks += Stopwatch.GetTimestamp() - start;
    }
}
