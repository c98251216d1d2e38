using DesignSearch.Search.Proof;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>Points of a set that differ in some choices only.</summary>
internal static class Combination
{
    /// <summary>The points: every combination of the levels left of some choices, all others at their lowest.</summary>
    /// <param name="set">The set.</param>
    /// <param name="over">Places of the choices.</param>
    public static IEnumerable<double[]> Of(LevelSets set, IEnumerable<int> over)
    {
        IEnumerable<double[]> points = [set.Lowest()];
        foreach (var at in over)
        {
            var left = set[at].ToArray();
            points = points.SelectMany(p => left.Select(l => (double[])[.. p[..at], l, .. p[(at + 1)..]]));
        }

        return points;
    }
}
