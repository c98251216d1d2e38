namespace DesignSearch.Search.Model;

/// <summary>
/// Turns a value into the few features of a curve that are not zero: a smooth one (a quadratic B-spline of few parts), which says how it runs where little is
/// known, and on top of it close knots, which the many points near the front bend into shape.
/// </summary>
internal sealed class FineCurve
{
    /// <summary>Those features that are not zero.</summary>
    public const int Active = 5;

    private const int Parts = 4;
    private const int Knots = 17;

    // The close knots count for less, so that they only tell what the smooth curve misses.
    private const double KnotWeight = 0.3;

    /// <summary>Features of a curve.</summary>
    public const int Size = Parts + 2 + Knots;

    /// <summary>The features of the place last asked for.</summary>
    public int[] Index { get; } = new int[Active];

    /// <summary>Their values.</summary>
    public double[] Value { get; } = new double[Active];

    /// <summary>Works out the features at a share of the way from low to high, 0 … 1.</summary>
    public void At(double share)
    {
        var along = share * Parts;
        var part = Math.Min((int)along, Parts - 1);
        var t = along - part;
        (Index[0], Index[1], Index[2]) = (part, part + 1, part + 2);
        (Value[0], Value[1], Value[2]) = (0.5 * (1 - t) * (1 - t), 0.5 + (t * (1 - t)), 0.5 * t * t);
        var knot = share * (Knots - 1);
        var at = Math.Min((int)knot, Knots - 2);
        (Index[3], Index[4]) = (Parts + 2 + at, Parts + 3 + at);
        (Value[3], Value[4]) = (KnotWeight * (1 - knot + at), KnotWeight * (knot - at));
    }

    /// <summary>The curve of some weights at the place last asked for.</summary>
    public double Sum(ReadOnlySpan<double> weight)
    {
        var sum = 0.0;
        for (var f = 0; f < Active; f++)
            sum += weight[Index[f]] * Value[f];
        return sum;
    }
}
