namespace DesignSearch.Search.Tests;

/// <summary>How far a known front lies from the points found.</summary>
internal static class GenerationalDistance
{
    /// <summary>
    /// The mean, over the known front, of the distance to the nearest found point, counting only the objectives in which that
    /// point is worse (Ishibuchi, Masuda, Tanigaki and Nojima, 2015). 0 when the found points cover the front.
    /// </summary>
    /// <param name="front">The known front, scaled objectives; at least one point.</param>
    /// <param name="found">The points found, scaled alike; infinity where there are none.</param>
    public static double Plus(IReadOnlyCollection<double[]> front, IReadOnlyCollection<double[]> found)
    {
        ArgumentNullException.ThrowIfNull(front);
        ArgumentNullException.ThrowIfNull(found);
        if (found.Count == 0)
            return double.PositiveInfinity;
        var sum = 0.0;
        foreach (var target in front)
        {
            var nearest = double.PositiveInfinity;
            foreach (var point in found)
            {
                var square = 0.0;
                for (var k = 0; k < target.Length; k++)
                {
                    var worse = Math.Max(0, point[k] - target[k]);
                    square += worse * worse;
                }

                nearest = Math.Min(nearest, square);
            }

            sum += Math.Sqrt(nearest);
        }

        return sum / front.Count;
    }
}
