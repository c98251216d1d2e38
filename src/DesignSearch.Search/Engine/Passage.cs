using System.Numerics;
using DesignSearch.Search.Moves;
using DesignSearch.Search.Space;

namespace DesignSearch.Search.Engine;

/// <summary>What a point must pass before it is evaluated: it was never met, and the screen lets it through; where it does not, the point is mended.</summary>
internal sealed class Passage(IProblem problem, SearchSpace space, Draws draws, PointSet met)
{
    private const int Changes = 8;
    private const int RepairsTried = 60;

    private const int Kept = 1024;

    private readonly ScreenMemo screen = new(problem);
    private readonly RepairGuide guide = new(space, Math.Clamp(problem.Constraints.Count, 1, 64));

    private readonly List<double[]> passed = [];
    private int oldest;

    /// <summary>What each objective cannot fall below at the point that was asked for last and passed.</summary>
    public double[] Bounds { get; } = new double[problem.Objectives.Count];

    /// <summary>Whether a point misses something; the bounds are filled where it does not.</summary>
    public bool Refuses(double[] point) => screen.Missed(point, Bounds, double.Epsilon) > 0;

    /// <summary>One of the points that passed lately; null where none did.</summary>
    public double[]? AnyPassed(ref SplitMixStream random) => passed.Count == 0 ? null : passed[random.Below(passed.Count)];

    /// <summary>Books a point that passes and will be evaluated: it counts as met, and others may be taken back towards it.</summary>
    /// <returns>False where it was met before.</returns>
    public bool LetThrough(double[] point)
    {
        if (!met.Add(SearchSpace.KeyOf(point)))
            return false;
        if (passed.Count < Kept)
            passed.Add(point);
        else
            passed[oldest++ % Kept] = point;
        return true;
    }

    /// <summary>
    /// The point, changed where it was met; where it is refused, taken back towards its parent, or repaired where it has none, or, where the repair does
    /// not come to an end, taken back towards one that passed. Null where that did not help. It counts as met then.
    /// </summary>
    public double[]? Through(double[] point, Descent descent, ref SplitMixStream random)
    {
        for (var change = 0; change < Changes && met.Contains(SearchSpace.KeyOf(point)); change++)
            draws.Disturb(point, ref random);
        if (met.Contains(SearchSpace.KeyOf(point)))
            return null;
        if (!Refuses(point))
            return LetThrough(point) ? point : null;
        met.Add(SearchSpace.KeyOf(point));
        var isMended = descent.First is { } parent
            ? TakenBack(point, parent.Point, ref random)
            : Repaired(point, ref random) || (AnyPassed(ref random) is { } other && TakenBack(point, other, ref random));
        return isMended && LetThrough(point) ? point : null;
    }

    // The other point passes, so half of what differs is taken back, or half of that, until this one passes too; in place. A few screens where a repair
    // takes forty.
    private bool TakenBack(double[] point, double[] passing, ref SplitMixStream random)
    {
        var changed = new int[space.Count];
        var count = 0;
        for (var i = 0; i < changed.Length; i++)
        {
            if (point[i] == passing[i])
                continue;
            var place = random.Below(++count);
            (changed[count - 1], changed[place]) = (changed[place], i);
        }

        double[]? taken = null;
        for (int fails = 0, passes = count; passes - fails > 1;)
        {
            var middle = (fails + passes) / 2;
            var other = (double[])point.Clone();
            for (var i = 0; i < middle; i++)
                other[changed[i]] = passing[changed[i]];
            space.Canonicalise(other);
            if (Refuses(other))
                fails = middle;
            else
                (passes, taken) = (middle, other);
        }

        taken?.CopyTo(point, 0);
        return taken is not null;
    }

    // Changes that each miss the limits by less; in place. True once the point passes.
    private bool Repaired(double[] point, ref SplitMixStream random)
    {
        var missed = screen.Missed(point, Bounds);
        var lacking = screen.Lacking;
        for (var change = 0; change < RepairsTried; change++)
        {
            var limit = Chosen(lacking, ref random);
            var variable = guide.Choose(limit, point, ref random);
            if (variable < 0)
                return false;
            var other = (double[])point.Clone();
            draws.Disturb(other, variable, ref random);
            var after = screen.Missed(other, Bounds, missed);
            guide.Book(limit, variable, after < missed);
            if (after >= missed)
                continue;
            other.CopyTo(point, 0);
            (missed, lacking) = (after, screen.Lacking);
            if (missed == 0)
                return true;
        }

        return false;
    }

    // One of the bits that are set.
    private static int Chosen(ulong bits, ref SplitMixStream random)
    {
        for (var skip = random.Below(BitOperations.PopCount(bits)); skip > 0; skip--)
            bits &= bits - 1;
        return BitOperations.TrailingZeroCount(bits);
    }
}
