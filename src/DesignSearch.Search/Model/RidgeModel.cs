namespace DesignSearch.Search.Model;

/// <summary>
/// Ridge regression of several figures on the same features, never solved outright but kept near its solution: each call of
/// <see cref="Improve"/> solves exactly for the dual weight of one known point after another (dual coordinate ascent;
/// Shalev-Shwartz and Zhang, 2013), so that the cost per evaluation is small and even.
/// </summary>
internal sealed class RidgeModel(Features features, int figures)
{
    private const int Capacity = 4096;
    private const double Ridge = 0.1;
    private const int Passes = 3;

    private readonly double[][] weights = [.. Enumerable.Range(0, figures).Select(_ => new double[features.Size])];
    private readonly double[][] kept = [.. Enumerable.Range(0, figures).Select(_ => new double[features.Size])];
    private readonly List<Known> known = [];
    private readonly int[] index = new int[features.Most];
    private readonly double[] value = new double[features.Most];
    private int oldest;
    private int turn;
    private int newest = -1;

    // A point by its features, so that they are worked out once.
    private sealed record Known(double[] Point, double[] Target, double[] Dual)
    {
        public int[] Index { get; private set; } = [];

        public double[] Value { get; private set; } = [];

        public double Square { get; private set; }

        public void Take(int[] index, double[] value, int count)
        {
            (Index, Value, Square) = (index[..count], value[..count], 0);
            foreach (var one in Value)
                Square += one * one;
        }
    }

    public int Count => known.Count;

    /// <summary>The weights of a figure.</summary>
    public ReadOnlySpan<double> Weights(int figure) => weights[figure];

    /// <summary>Predicts the figures of a point that are needed.</summary>
    public void Predict(ReadOnlySpan<double> point, Span<double> result, bool[] needed)
    {
        var count = features.Of(point, index, value);
        for (var k = 0; k < figures; k++)
        {
            if (needed[k])
                result[k] = Dot(weights[k], index.AsSpan(0, count), value.AsSpan(0, count));
        }
    }

    /// <summary>Adds a point, to be solved for next; the oldest makes room when there are too many.</summary>
    public void Add(double[] point, double[] target)
    {
        var count = features.Of(point, index, value);
        var one = new Known(point, target, new double[figures]);
        one.Take(index, value, count);
        if (known.Count < Capacity)
        {
            newest = known.Count;
            known.Add(one);
            return;
        }

        Absorb(known[oldest]);
        known[oldest] = one;
        newest = oldest;
        oldest = (oldest + 1) % Capacity;
    }

    /// <summary>Takes the next few known points in turn; the scale says what a raw figure counts as now.</summary>
    public void Improve(int steps, Func<int, double, double> scale, bool[] needed)
    {
        for (var step = 0; step < steps && known.Count > 0; step++)
        {
            var one = known[newest >= 0 ? newest : turn];
            for (var k = 0; k < figures; k++)
            {
                if (needed[k])
                    Solve(one, k, scale(k, one.Target[k]));
            }

            turn = newest >= 0 ? turn : (turn + 1) % known.Count;
            newest = -1;
        }
    }

    /// <summary>Lets pairs that matter count for more, then takes every known point a few times in turn.</summary>
    public void Reweigh(Func<int, double, double> scale, bool[] needed)
    {
        features.UseAll();
        Rebuild();
        var factors = features.Reweigh([.. weights.Where((_, k) => needed[k])]);
        foreach (var weight in kept)
        {
            for (var f = 0; f < factors.Length; f++)
                weight[f] *= factors[f];
        }

        Rebuild();
        Improve(Passes * known.Count, scale, needed);
        features.Prune();
        Rebuild();
        Improve(known.Count, scale, needed);
    }

    // Works out the features of all that is known anew, and the weights from the duals.
    private void Rebuild()
    {
        for (var k = 0; k < figures; k++)
            kept[k].CopyTo(weights[k], 0);
        foreach (var one in known)
        {
            one.Take(index, value, features.Of(one.Point, index, value));
            for (var k = 0; k < figures; k++)
                Shift(weights[k], one, one.Dual[k]);
        }
    }

    private void Solve(Known one, int figure, double target)
    {
        var weight = weights[figure];
        var dual = one.Dual[figure];
        var change = (target - Dot(weight, one.Index, one.Value) - (Ridge * dual)) / (Ridge + one.Square);
        one.Dual[figure] = dual + change;
        Shift(weight, one, change);
    }

    // What a forgotten point taught stays.
    private void Absorb(Known one)
    {
        for (var k = 0; k < figures; k++)
            Shift(kept[k], one, one.Dual[k]);
    }

    private static void Shift(double[] weight, Known one, double change)
    {
        ReadOnlySpan<int> index = one.Index;
        ReadOnlySpan<double> value = one.Value;
        for (var f = 0; f < index.Length && f < value.Length; f++)
            weight[index[f]] += change * value[f];
    }

    private static double Dot(double[] weight, ReadOnlySpan<int> index, ReadOnlySpan<double> value)
    {
        var sum = 0.0;
        for (var f = 0; f < index.Length && f < value.Length; f++)
            sum += weight[index[f]] * value[f];
        return sum;
    }
}
