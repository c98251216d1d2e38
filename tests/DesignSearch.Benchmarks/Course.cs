using DesignSearch.Search;
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

    public long? To99 { get; private set; }

    public long? To999 { get; private set; }

    public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations)
    {
        foreach (var evaluation in evaluations)
        {
            seen++;
            if (evaluation.TotalViolation == 0 && Enter(evaluation.Objectives))
            {
                share = front.Share(members);
                if (share >= 0.99)
                    To99 ??= seen;
                if (share >= 0.999)
                    To999 ??= seen;
            }

            if (!marks.Contains(seen))
                continue;
            ShareAt[seen] = share;
            FoundAt[seen] = front.Found(members);
            if (front.Points.Count > 0)
                DistanceAt[seen] = GenerationalDistance.Plus([.. front.Points.Select(front.Scale)], [.. members.Select(front.Scale)]);
        }
    }

    private bool Enter(double[] objectives)
    {
        if (members.Exists(m => Dominance.Covers(m, objectives)))
            return false;
        members.RemoveAll(m => Dominance.Covers(objectives, m));
        members.Add(objectives);
        return true;
    }
}
