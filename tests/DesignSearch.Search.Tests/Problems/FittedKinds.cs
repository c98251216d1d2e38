namespace DesignSearch.Search.Tests;

/// <summary>
/// Invented: kinds and reals that must fit each other. Each real has a best place for the first objective and another for the second, and both
/// hang on one of the kinds; each kind costs something by itself and with another. For a given choice of kinds the front is known in closed
/// form, so the exact one is the best over all choices.
/// </summary>
public sealed class FittedKinds : IProblem
{
    private readonly int kinds;
    private readonly int levels;
    private readonly int reals;
    private readonly double power;
    private readonly int[] master;
    private readonly double[][][] places;
    private readonly double[][][] costs;

    /// <summary>Draws the tables.</summary>
    /// <param name="seed">Of the draw.</param>
    /// <param name="kinds">Categories.</param>
    /// <param name="levels">Levels of each.</param>
    /// <param name="reals">Real variables, 0 … 1.</param>
    /// <param name="power">How a distance counts: 2 for its square, 1 for itself.</param>
    public FittedKinds(int seed, int kinds = 6, int levels = 4, int reals = 8, double power = 2)
    {
        (this.kinds, this.levels, this.reals, this.power) = (kinds, levels, reals, power);
        var random = new Random(seed);
        Variables =
        [
            .. FormulaProblem.Reals([.. Enumerable.Repeat((0.0, 1.0), reals)]),
            .. Enumerable.Range(1, kinds).Select(i => new Variable { Name = FormattableString.Invariant($"kind {i}"), Kind = VariableKind.Category, Levels = levels }),
        ];
        master = [.. Enumerable.Range(0, reals).Select(i => i % kinds)];
        random.Shuffle(master);
        double[] Draw(int many, double least, double width) => [.. Enumerable.Range(0, many).Select(_ => least + (width * random.NextDouble()))];
        places = [.. Enumerable.Range(0, 2).Select(_ => Enumerable.Range(0, reals).Select(_ => Draw(levels, 0.1, 0.8)).ToArray())];
        costs = [.. Enumerable.Range(0, 2).Select(_ => Enumerable.Range(0, kinds).Select(_ => Draw(levels * levels, 0, 0.6)).ToArray())];
    }

    public IReadOnlyList<Variable> Variables { get; }

    public IReadOnlyList<string> Objectives { get; } = ["first", "second"];

    public IReadOnlyList<string> Constraints { get; } = [];

    public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
    {
    }

    public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
    {
        for (var i = 0; i < points.Length; i++)
        {
            var x = points[i];
            evaluations[i] = new([.. Enumerable.Range(0, 2).Select(k =>
                Cost(k, kind => (int)x[reals + kind]) + Enumerable.Range(0, reals).Sum(r => Math.Pow(Math.Abs(x[r] - places[k][r][(int)x[reals + master[r]]]), power)))], []);
        }
    }

    /// <summary>The exact front, scanned at 400 places of each choice of kinds that is not beaten as a whole.</summary>
    public KnownFront Front()
    {
        var best = new List<(double First, double Second)>();
        var level = new int[kinds];
        for (var choice = 0; choice < (int)Math.Pow(levels, kinds); choice++)
        {
            for (int kind = 0, rest = choice; kind < kinds; kind++, rest /= levels)
                level[kind] = rest % levels;
            double one = Cost(0, kind => level[kind]), two = Cost(1, kind => level[kind]);
            var gap = Enumerable.Range(0, reals).Sum(r => Math.Pow(Math.Abs(places[0][r][level[master[r]]] - places[1][r][level[master[r]]]), power));
            best.AddRange(Enumerable.Range(0, 401).Select(t => t / 400.0).Select(t => (one + (Math.Pow(t, power) * gap), two + (Math.Pow(1 - t, power) * gap))));
            if (choice % 64 == 63)
                best = Sift(best);
        }

        return KnownFront.Of(Sift(best).Select(b => new[] { b.First, b.Second })) with { Points = [] };
    }

    private static List<(double First, double Second)> Sift(List<(double First, double Second)> points)
    {
        var kept = new List<(double First, double Second)>();
        foreach (var point in points.Order())
        {
            if (kept.Count == 0 || point.Second < kept[^1].Second)
                kept.Add(point);
        }

        return kept;
    }

    private double Cost(int objective, Func<int, int> level)
    {
        var sum = 0.0;
        for (var kind = 0; kind < kinds; kind++)
            sum += costs[objective][kind][(level(kind) * levels) + level((kind + 1) % kinds)];
        return sum;
    }
}
