namespace DesignSearch.Search.Tests;

/// <summary>The worked example of docs/search-engine.md.</summary>
public sealed class ShelfProblem : IProblem
{
    private static readonly double[] Price = [9, 14, 22];
    private static readonly double[] Strength = [30, 42, 65];
    private static readonly double[] Weight = [2.1, 2.9, 3.8];

    public IReadOnlyList<Variable> Variables { get; } =
    [
        new() { Name = "boards", Kind = VariableKind.Ordered, Levels = 8 },
        new() { Name = "wood", Kind = VariableKind.Category, Levels = 3 },
        new() { Name = "varnished", Kind = VariableKind.Category, Levels = 2 },
        new() { Name = "coats", Kind = VariableKind.Ordered, Levels = 3, AwakeWhen = shelf => shelf[2] == 1 },
    ];

    public IReadOnlyList<string> Objectives { get; } = ["price", "weakness"];

    public IReadOnlyList<string> Constraints { get; } = ["weight"];

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
    {
        objectiveBounds[0] = PriceOf(point);
        violations[0] = Math.Max(0, ((point[0] + 1) * Weight[(int)point[1]]) - 20);
    }

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        for (var i = 0; i < points.Length; i++)
        {
            var coats = points[i][2] == 1 ? points[i][3] + 1 : 0;
            var strength = (points[i][0] + 1) * Strength[(int)points[i][1]] * (1 + (0.04 * coats));
            evaluations[i] = new([PriceOf(points[i]), -strength], [0], Merit: strength / PriceOf(points[i]));
        }
    }

    private static double PriceOf(ReadOnlySpan<double> point) =>
        ((point[0] + 1) * Price[(int)point[1]]) + (point[2] == 1 ? 3 * (point[3] + 1) : 0);
}
