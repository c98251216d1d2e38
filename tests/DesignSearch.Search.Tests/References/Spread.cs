namespace DesignSearch.Search.Tests;

/// <summary>How evenly a front of two objectives is covered.</summary>
internal static class Spread
{
    /// <summary>
    /// Gaps between neighbours and beyond the ends, against even gaps (Δ of Deb, Pratap, Agarwal and Meyarivan, 2002): 0 for points at even
    /// distances from one end of the known front to the other, about 1 where they lie anyhow or in few places. It says nothing of how near
    /// the front they are.
    /// </summary>
    /// <param name="found">The points found, two scaled objectives each, none better than another; 1 where there are fewer than two.</param>
    /// <param name="firstEnd">The known front's end that is least in the first objective, scaled alike.</param>
    /// <param name="lastEnd">Its end that is least in the second.</param>
    public static double Of(IEnumerable<double[]> found, double[] firstEnd, double[] lastEnd)
    {
        ArgumentNullException.ThrowIfNull(found);
        ArgumentNullException.ThrowIfNull(firstEnd);
        ArgumentNullException.ThrowIfNull(lastEnd);
        double[][] points = [.. found.OrderBy(p => p[0])];
        if (points.Length < 2)
            return 1;
        var gaps = new double[points.Length - 1];
        for (var i = 0; i < gaps.Length; i++)
            gaps[i] = Distance(points[i], points[i + 1]);
        var ends = Distance(firstEnd, points[0]) + Distance(points[^1], lastEnd);
        var mean = gaps.Sum() / gaps.Length;
        return (ends + gaps.Sum(g => Math.Abs(g - mean))) / (ends + (gaps.Length * mean));
    }

    private static double Distance(double[] a, double[] b) => Math.Sqrt(((a[0] - b[0]) * (a[0] - b[0])) + ((a[1] - b[1]) * (a[1] - b[1])));
}
