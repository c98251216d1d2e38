namespace DesignSearch.Search.Tests;

/// <summary>Levels, a formula for what the screen finds missing, and one for the figures.</summary>
public sealed class ScreenedProblem(IEnumerable<int> levels, Func<double[], double> missed, Func<double[], double[]> figures, bool isKnown = false) : IProblem
{
    public IReadOnlyList<Variable> Variables { get; } = FormulaProblem.Whole([.. levels]);

    public IReadOnlyList<string> Objectives { get; } = ["first", "second"];

    public IReadOnlyList<string> Constraints { get; } = ["limit"];

    public double Missed(double[] point) => missed(point);

    public double[] Figures(double[] point) => figures(point);

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
    {
        violations[0] = missed(point.ToArray());
        if (isKnown)
            figures(point.ToArray()).CopyTo(objectiveBounds);
    }

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        for (var i = 0; i < points.Length; i++)
            evaluations[i] = new(figures(points[i]), [missed(points[i])]);
    }
}
