using DesignSearch.Search.Space;

namespace DesignSearch.Search.Tests;

/// <summary>An invented market stall, small enough to go through: a roof whose size sleeps without one, tables, boxes that should be two a table, lamps that act one way.</summary>
public sealed class StallProblem : IBoundedProblem
{
    private static readonly double[] RoofPrice = [0, 20, 26, 41];
    private static readonly double[] Shelter = [0, 0.7, 1, 1.3];
    private static readonly double[] LampPrice = [0, 4, 11, 25];

    public IReadOnlyList<Variable> Variables { get; } =
    [
        new() { Name = "roof", Kind = VariableKind.Category, Levels = 4 },
        new() { Name = "roof size", Kind = VariableKind.Ordered, Levels = 5, AwakeWhen = stall => stall[0] != 0 },
        new() { Name = "tables", Kind = VariableKind.Ordered, Levels = 6 },
        new() { Name = "boxes", Kind = VariableKind.Ordered, Levels = 8 },
        new() { Name = "lamps", Kind = VariableKind.Ordered, Levels = 4 },
    ];

    public IReadOnlyList<string> Objectives { get; } = ["price", "trouble"];

    public IReadOnlyList<string> Constraints { get; } = ["room"];

    public IReadOnlyList<bool> ActsOneWay { get; } = [false, false, false, false, true];

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
    {
        objectiveBounds[0] = Price((int)point[0], point[1], point[2], point[3], (int)point[4]);
        violations[0] = Math.Max(0, Room(point[2], point[3]) - 9);
    }

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        for (var i = 0; i < points.Length; i++)
        {
            var p = points[i];
            evaluations[i] = new([Price((int)p[0], p[1], p[2], p[3], (int)p[4]), Trouble((int)p[0], p[1], p[2], p[3], p[4])], [Math.Max(0, Room(p[2], p[3]) - 9)]);
        }
    }

    public bool BoundCheaply(LevelBox box, Span<double> objectiveBounds)
    {
        objectiveBounds[0] = Enumerable.Range(box.Low[0], box.High[0] - box.Low[0] + 1).Min(roof => Price(roof, box.Low[1], box.Low[2], box.Low[3], box.Low[4]));
        return Room(box.Low[2], box.Low[3]) <= 9;
    }

    public void BoundBySimulation(LevelBox box, Span<double> objectiveBounds) =>
        objectiveBounds[1] = Trouble(box.Low[0], box.Low[1], box.Low[2], box.Low[3], box.High[4]);

    private static double Price(int roof, double size, double tables, double boxes, int lamps) =>
        RoofPrice[roof] + (roof == 0 ? 0 : 3 * size) + (5 * tables) + (2 * boxes) + LampPrice[lamps];

    private static double Room(double tables, double boxes) => (1.5 * tables) + (0.5 * boxes);

    private static double Trouble(int roof, double size, double tables, double boxes, double lamps) =>
        (100 / (1 + tables + (Shelter[roof] * (size + 1))) * (1 - (0.12 * lamps))) + Math.Abs(boxes - (2 * tables));
}
