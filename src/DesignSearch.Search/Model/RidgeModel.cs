namespace DesignSearch.Search;

/// <summary>
/// Ridge regression of several figures on the same features, never solved outright but kept near its solution: each call of
/// <see cref="Improve"/> solves exactly for the dual weight of one known point after another (dual coordinate ascent;
/// Shalev-Shwartz and Zhang, 2013), so that the cost per evaluation is small and even.
/// </summary>
internal sealed class RidgeModel(Features features, int figures)
{
    private const int Capacity = 4096;
    private const double Ridge = 0.1;

    private readonly double[][] weights = [.. Enumerable.Range(0, figures).Select(_ => new double[features.Size])];
    private readonly List<double[]> points = [];
    private readonly List<double[]> targets = [];
    private readonly List<double[]> duals = [];
    private readonly int[] index = new int[features.Most];
    private readonly double[] value = new double[features.Most];
    private int oldest;
    private int turn;

    public int Count => points.Count;

    /// <summary>Predicts the figures of a point that are needed.</summary>
    public void Predict(ReadOnlySpan<double> point, Span<double> result, bool[] needed)
    {
        var count = features.Of(point, index, value);
        for (var k = 0; k < figures; k++)
        {
            if (needed[k])
                result[k] = Dot(weights[k], count);
        }
    }

    /// <summary>Adds a point, to be solved for next; the oldest makes room when there are too many.</summary>
    public void Add(double[] point, double[] target)
    {
        var at = points.Count;
        if (points.Count < Capacity)
        {
            points.Add(point);
            targets.Add(target);
            duals.Add(new double[figures]);
            turn = at;
            return;
        }

        Forget(oldest);
        points[oldest] = point;
        targets[oldest] = target;
        Array.Clear(duals[oldest]);
        turn = oldest;
        oldest = (oldest + 1) % Capacity;
    }

    /// <summary>Takes the next few known points in turn; the scale says what a raw figure counts as now.</summary>
    public void Improve(int steps, Func<int, double, double> scale, bool[] needed)
    {
        Span<double> target = stackalloc double[figures];
        for (var step = 0; step < steps && points.Count > 0; step++)
        {
            for (var k = 0; k < figures; k++)
                target[k] = scale(k, targets[turn][k]);
            Solve(turn, target, needed);
            turn = (turn + 1) % points.Count;
        }
    }

    private void Solve(int place, ReadOnlySpan<double> target, bool[] needed)
    {
        var count = features.Of(points[place], index, value);
        var square = 0.0;
        for (var f = 0; f < count; f++)
            square += value[f] * value[f];
        for (var k = 0; k < figures; k++)
        {
            if (!needed[k])
                continue;
            var dual = duals[place];
            var change = (target[k] - Dot(weights[k], count) - (Ridge * dual[k])) / (Ridge + square);
            dual[k] += change;
            var weight = weights[k];
            for (var f = 0; f < count; f++)
                weight[index[f]] += change * value[f];
        }
    }

    private void Forget(int place)
    {
        var count = features.Of(points[place], index, value);
        for (var k = 0; k < figures; k++)
        {
            for (var f = 0; f < count; f++)
                weights[k][index[f]] -= duals[place][k] * value[f];
        }
    }

    private double Dot(double[] weight, int count)
    {
        var sum = 0.0;
        for (var f = 0; f < count; f++)
            sum += weight[index[f]] * value[f];
        return sum;
    }
}
