using DesignSearch.Search.Engine;

namespace DesignSearch.Search.Tests;

internal sealed class MemoryLog : ISearchLog
{
    public List<(double[] Point, Evaluation Evaluation)> Entries { get; } = [];

    public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations)
    {
        for (var i = 0; i < points.Length; i++)
            Entries.Add((points[i], evaluations[i]));
    }
}
