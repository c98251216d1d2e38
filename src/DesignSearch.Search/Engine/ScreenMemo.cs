using DesignSearch.Search.Space;

namespace DesignSearch.Search.Engine;

/// <summary>Screens points of a problem and remembers what it found: a search looks at most points several times, above all while it repairs one.</summary>
/// <param name="problem">The problem; its screen gives the same answer each time.</param>
internal sealed class ScreenMemo(IProblem problem)
{
    // About 6 MB with two objectives. Then all is forgotten: a search comes back to what it met lately.
    private const int Most = 1 << 16;

    private readonly Dictionary<PointKey, int> places = [];
    private readonly List<double> stored = [];
    private readonly double[] violations = new double[problem.Constraints.Count];
    private readonly int width = problem.Objectives.Count + 3;

    /// <summary>
    /// Which constraints the point last asked for misses, a bit each; where there are more than 64, every 64th shares one. As far as its screen went.
    /// </summary>
    public ulong Lacking { get; private set; }

    /// <summary>By how much a canonical point misses the constraints that need no evaluation, in all; 0 when it passes.</summary>
    /// <param name="point">The point.</param>
    /// <param name="objectiveBounds">Filled with what each objective cannot fall below; left as they were where the answer is not exact.</param>
    /// <param name="enough">From here on the answer need not be exact: it may be less than the sum, but is at least this.</param>
    public double Missed(double[] point, double[] objectiveBounds, double enough = double.PositiveInfinity)
    {
        var key = SearchSpace.KeyOf(point);
        if (places.TryGetValue(key, out var at) && (stored[at] == 1 || stored[at + 1] >= enough))
        {
            for (var i = 0; stored[at] == 1 && i < objectiveBounds.Length; i++)
                objectiveBounds[i] = stored[at + 3 + i];
            Lacking = BitConverter.DoubleToUInt64Bits(stored[at + 2]);
            return stored[at + 1];
        }

        Array.Fill(objectiveBounds, double.NegativeInfinity);
        Array.Clear(violations);
        var isWhole = true;
        if (problem is IEarlyScreen early && double.IsFinite(enough))
            isWhole = early.ScreenUntil(point, objectiveBounds, violations, enough);
        else
            problem.Screen(point, objectiveBounds, violations);
        var sum = 0.0;
        Lacking = 0;
        for (var i = 0; i < violations.Length; i++)
        {
            sum += Math.Max(violations[i], 0);
            Lacking |= violations[i] > 0 ? 1UL << (i % 64) : 0;
        }

        if (!places.ContainsKey(key))
            at = Room(key);
        (stored[at], stored[at + 1], stored[at + 2]) = (isWhole ? 1 : 0, sum, BitConverter.UInt64BitsToDouble(Lacking));
        for (var i = 0; i < objectiveBounds.Length; i++)
            stored[at + 3 + i] = objectiveBounds[i];
        return sum;
    }

    private int Room(PointKey key)
    {
        if (places.Count == Most)
        {
            places.Clear();
            stored.Clear();
        }

        var at = places[key] = stored.Count;
        for (var i = 0; i < width; i++)
            stored.Add(0);
        return at;
    }
}
