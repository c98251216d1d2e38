using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Tests;

namespace DesignSearch.Benchmarks;

/// <summary>Scores one search while it runs.</summary>
internal sealed class Course(KnownFront front, long[] marks) : ISearchLog
{
    private readonly List<double[]> members = [];
    private double share;
    private long seen;

    public Dictionary<long, double> ShareAt { get; } = [];

    public Dictionary<long, int> FoundAt { get; } = [];

    public Dictionary<long, double> DistanceAt { get; } = [];

    public Dictionary<long, double> SpreadAt { get; } = [];

    public long? To99 { get; private set; }

    public long? To999 { get; private set; }

    public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations)
    {
        foreach (var evaluation in evaluations)
        {
            seen++;
            if (evaluation.TotalViolation == 0 && Enter(evaluation.Objectives))
            {
                if (share >= 0.99)
                    To99 ??= seen;
                if (share >= 0.999)
                    To999 ??= seen;
            }

            if (!marks.Contains(seen))
                continue;
            ShareAt[seen] = share;
            SpreadAt[seen] = Spread.Of(members.Select(front.Scale), [0, 1], [1, 0]);
            FoundAt[seen] = front.Found(members);
            if (front.Points.Count > 0)
                DistanceAt[seen] = GenerationalDistance.Plus([.. front.Points.Select(front.Scale)], [.. members.Select(front.Scale)]);
        }
    }

    // Kept sorted, the area carried along, so that scoring a long search costs little.
    private bool Enter(double[] objectives)
    {
        var first = members.BinarySearch(objectives, Comparer<double[]>.Create((a, b) => a[0].CompareTo(b[0])));
        if (first < 0)
            first = ~first;
        else if (members[first][1] <= objectives[1])
            return false;
        if (first > 0 && members[first - 1][1] <= objectives[1])
            return false;
        var end = first;
        while (end < members.Count && members[end][1] >= objectives[1])
            end++;
        double[][] before = [.. members[Math.Max(0, first - 1)..Math.Min(members.Count, end + 1)]];
        members.RemoveRange(first, end - first);
        members.Insert(first, objectives);
        double[][] after = [.. members[Math.Max(0, first - 1)..Math.Min(members.Count, first + 2)]];
        // What lies outside these neighbours is the same before and after.
        share += front.Share(after) - front.Share(before);
        return true;
    }
}
