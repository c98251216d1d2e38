namespace DesignSearch.Search.Model;

/// <summary>Places along a <see cref="FineCurve"/>: both ends, and even ones between them that shift from climb to climb, so that no value is out of reach.</summary>
internal sealed class FineGrid
{
    /// <summary>How many.</summary>
    public const int Places = 48;

    private readonly FineCurve curve = new();
    private readonly double[] shares = new double[Places];
    private readonly int[] index = new int[Places * FineCurve.Active];
    private readonly double[] value = new double[Places * FineCurve.Active];

    /// <summary>Shifts the places between the ends.</summary>
    /// <param name="phase">0 … 1.</param>
    public void Shift(double phase)
    {
        for (var place = 0; place < Places; place++)
        {
            shares[place] = place == 0 ? 0 : place == Places - 1 ? 1 : (place - 1 + phase) / (Places - 2);
            curve.At(shares[place]);
            curve.Index.CopyTo(index, place * FineCurve.Active);
            curve.Value.CopyTo(value, place * FineCurve.Active);
        }
    }

    /// <summary>How far along a place lies, 0 … 1.</summary>
    public double Share(int place) => shares[place];

    /// <summary>A line over the places, read between them.</summary>
    public double Between(ReadOnlySpan<double> line, double share)
    {
        var after = 1;
        while (after < Places - 1 && shares[after] < share)
            after++;
        var width = shares[after] - shares[after - 1];
        var part = width > 0 ? (share - shares[after - 1]) / width : 0;
        return ((1 - part) * line[after - 1]) + (part * line[after]);
    }

    /// <summary>The curve of some weights at a place.</summary>
    public double Sum(int place, ReadOnlySpan<double> weight)
    {
        var sum = 0.0;
        for (var f = place * FineCurve.Active; f < (place + 1) * FineCurve.Active; f++)
            sum += weight[index[f]] * value[f];
        return sum;
    }
}
