using System.Diagnostics;
using DesignSearch.Search;

namespace DesignSearch.Benchmarks;

/// <summary>Counts the time that the scoring takes.</summary>
internal sealed class TimedLog(ISearchLog inner) : ISearchLog
{
    private long ticks;

    public double Micros => ticks * 1e6 / Stopwatch.Frequency;

    public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations)
    {
        var start = Stopwatch.GetTimestamp();
        inner.Append(firstIndex, points, evaluations);
        ticks += Stopwatch.GetTimestamp() - start;
    }
}
