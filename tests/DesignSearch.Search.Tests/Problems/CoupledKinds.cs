namespace DesignSearch.Search.Tests;

/// <summary>
/// Invented: kinds without an order of which only pairs cost anything. Each objective is the sum of a random table over every pair of a drawn
/// graph, so that no kind is good or bad by itself and what is changed alone mostly makes matters worse. The exact front comes from going
/// through all combinations.
/// </summary>
public sealed class CoupledKinds : IProblem
{
    private readonly int count;
    private readonly int levels;
    private readonly (int First, int Second)[] pairs;
    private readonly double[][] first;
    private readonly double[][] second;

    /// <summary>Draws the graph and the tables.</summary>
    /// <param name="seed">Of the draw.</param>
    /// <param name="count">Kinds.</param>
    /// <param name="levels">Levels of each.</param>
    /// <param name="wanted">Pairs that cost something: every kind is in one (a ring), the others are drawn.</param>
    public CoupledKinds(int seed, int count = 12, int levels = 4, int wanted = 12)
    {
        (this.count, this.levels) = (count, levels);
        var random = new Random(seed);
        Variables = [.. Enumerable.Range(1, count).Select(i => new Variable { Name = FormattableString.Invariant($"kind {i}"), Kind = VariableKind.Category, Levels = levels })];
        var order = Enumerable.Range(0, count).ToArray();
        random.Shuffle(order);
        var ring = order.Select((kind, i) => (Math.Min(kind, order[(i + 1) % count]), Math.Max(kind, order[(i + 1) % count]))).ToHashSet();
        var others = Enumerable.Range(0, count).SelectMany(j => Enumerable.Range(0, j).Select(i => (i, j))).Where(p => !ring.Contains(p)).ToArray();
        random.Shuffle(others);
        pairs = [.. ring.Concat(others.Take(wanted - ring.Count))];
        double[] Draw(int _) => [.. Enumerable.Range(0, levels * levels).Select(_ => random.NextDouble())];
        (first, second) = ([.. pairs.Select((_, i) => Draw(i))], [.. pairs.Select((_, i) => Draw(i))]);
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
            double one = 0, two = 0;
            for (var p = 0; p < pairs.Length; p++)
            {
                var cell = ((int)points[i][pairs[p].First] * levels) + (int)points[i][pairs[p].Second];
                (one, two) = (one + first[p][cell], two + second[p][cell]);
            }

            evaluations[i] = new([one, two], []);
        }
    }

    /// <summary>The exact front: all combinations, kind by kind, each with the sums of the pairs settled so far.</summary>
    public KnownFront Front()
    {
        var settled = Enumerable.Range(0, count).Select(kind => Enumerable.Range(0, pairs.Length).Where(p => pairs[p].Second == kind).ToArray()).ToArray();
        var (at, best) = (new int[count], new List<(double First, double Second)>());
        Go(0, 0, 0);
        return KnownFront.Of(best.Select(b => new[] { b.First, b.Second }));

        void Go(int kind, double one, double two)
        {
            if (kind == count)
            {
                Take(one, two);
                return;
            }

            for (at[kind] = 0; at[kind] < levels; at[kind]++)
            {
                double a = one, b = two;
                foreach (var p in settled[kind])
                {
                    var cell = (at[pairs[p].First] * levels) + at[kind];
                    (a, b) = (a + first[p][cell], b + second[p][cell]);
                }

                if (!Beaten(a, b))
                    Go(kind + 1, a, b);
            }
        }

        // Costs only grow, so a part that is beaten already stays so.
        bool Beaten(double one, double two)
        {
            var place = best.BinarySearch((one, double.PositiveInfinity));
            place = place < 0 ? ~place : place;
            return place > 0 && best[place - 1].Second <= two;
        }

        void Take(double one, double two)
        {
            if (Beaten(one, two))
                return;
            best.RemoveAll(b => b.First >= one && b.Second >= two);
            var place = best.BinarySearch((one, two));
            best.Insert(place < 0 ? ~place : place, (one, two));
        }
    }
}
