namespace DesignSearch.Search.Indicators;

/// <summary>The volume between a set of points and a reference that at least one of the points dominates.</summary>
public static class Hypervolume
{
    /// <summary>Exact for any number of objectives; a sweep for two, slices for more. Points not better than the reference add nothing.</summary>
    /// <param name="points">Objectives of each point, all minimised; dominated ones are allowed.</param>
    /// <param name="reference">One value per objective.</param>
    public static double Of(IEnumerable<double[]> points, double[] reference)
    {
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(reference);
        var inside = points.Where(p => Inside(p, reference)).ToArray();
        return Volume(inside, reference, reference.Length);
    }

    private static bool Inside(double[] point, double[] reference)
    {
        for (var i = 0; i < reference.Length; i++)
        {
            if (!(point[i] < reference[i]))
                return false;
        }

        return true;
    }

    private static double Volume(double[][] points, double[] reference, int objectives)
    {
        if (points.Length == 0)
            return 0;
        if (objectives == 1)
            return reference[0] - points.Min(p => p[0]);
        return objectives == 2 ? Area(points, reference) : Slices(points, reference, objectives);
    }

    private static double Area(double[][] points, double[] reference)
    {
        var area = 0.0;
        var ceiling = reference[1];
        foreach (var point in points.OrderBy(p => p[0]).ThenBy(p => p[1]))
        {
            if (point[1] >= ceiling)
                continue;
            area += (reference[0] - point[0]) * (ceiling - point[1]);
            ceiling = point[1];
        }

        return area;
    }

    // Cuts along the last objective: between two neighbouring values the cross-section is spanned by all points below.
    private static double Slices(double[][] points, double[] reference, int objectives)
    {
        var last = objectives - 1;
        var ordered = points.OrderBy(p => p[last]).ToArray();
        var below = new List<double[]>();
        var volume = 0.0;
        for (var i = 0; i < ordered.Length; i++)
        {
            var point = ordered[i];
            if (!below.Exists(b => Dominance.Covers(b.AsSpan(0, last), point.AsSpan(0, last))))
            {
                below.RemoveAll(b => Dominance.Covers(point.AsSpan(0, last), b.AsSpan(0, last)));
                below.Add(point);
            }

            var top = i + 1 < ordered.Length ? ordered[i + 1][last] : reference[last];
            if (top > point[last])
                volume += (top - point[last]) * Volume([.. below], reference, last);
        }

        return volume;
    }
}
