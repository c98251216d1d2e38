namespace DesignSearch.Search.Tests;

/// <summary>A problem that is one formula: a point in, objectives and violations out; nothing is known before the evaluation.</summary>
public sealed class FormulaProblem(IReadOnlyList<Variable> variables, int objectives, int constraints, Func<double[], (double[] Objectives, double[] Violations)> formula) : IProblem
{
    private long started;

    public IReadOnlyList<Variable> Variables { get; } = variables;

    public IReadOnlyList<string> Objectives { get; } = [.. Enumerable.Range(1, objectives).Select(i => FormattableString.Invariant($"f{i}"))];

    public IReadOnlyList<string> Constraints { get; } = [.. Enumerable.Range(1, constraints).Select(i => FormattableString.Invariant($"g{i}"))];

    public long Started => started;

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
    {
    }

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        Interlocked.Add(ref started, points.Length);
        for (var i = 0; i < points.Length; i++)
        {
            var (f, g) = formula(points[i]);
            evaluations[i] = new(f, g);
        }
    }

    public (double[] Objectives, double[] Violations) At(params double[] point) => formula(point);

    internal static Variable[] Reals(params (double Low, double High)[] bounds) =>
        [.. bounds.Select((b, i) => new Variable { Name = FormattableString.Invariant($"x{i + 1}"), Kind = VariableKind.Real, Low = b.Low, High = b.High })];

    internal static Variable[] Whole(params int[] levels) =>
        [.. levels.Select((l, i) => new Variable { Name = FormattableString.Invariant($"x{i + 1}"), Kind = VariableKind.Ordered, Levels = l })];
}
