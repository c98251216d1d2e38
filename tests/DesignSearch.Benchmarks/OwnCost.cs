using DesignSearch.Search;
using DesignSearch.Search.Engine;

namespace DesignSearch.Benchmarks;

/// <summary>What the engine itself costs: processor time of a search less that of evaluating the same points once more by themselves.</summary>
internal static class OwnCost
{
    /// <summary>Microseconds an evaluation, one thread; the problem's screen counts as the engine's.</summary>
    public static double Micros(Func<IProblem> make, SearchSettings settings)
    {
        var log = new Keep();
        var start = Environment.CpuUsage.TotalTime;
        var result = new SearchEngine(make(), settings).Run(log: log);
        var searched = Environment.CpuUsage.TotalTime - start;
        var problem = make();
        var answer = new Evaluation[1];
        start = Environment.CpuUsage.TotalTime;
        foreach (var point in log.Points)
            problem.Evaluate([point], answer);
        return (searched - (Environment.CpuUsage.TotalTime - start)).TotalMicroseconds / result.Evaluations;
    }

    /// <summary>Prints what a search holds at its last evaluation (managed), what the process took at most, and the time an evaluation, problem included.</summary>
    public static void Memory(string name, Func<IProblem> make, long evaluations)
    {
        GC.Collect();
        var before = GC.GetTotalMemory(true);
        var start = Environment.CpuUsage.TotalTime;
        var last = new Watch(evaluations);
        var result = new SearchEngine(make(), new() { MaxEvaluations = evaluations, BlockSize = 64, EnumerateUpTo = 0 }).Run(log: last);
        Console.WriteLine(FormattableString.Invariant($"| {name} | {result.Evaluations} | {(last.Bytes - before) / 1e6:0} | {System.Diagnostics.Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} | {result.Front.Count} | {(Environment.CpuUsage.TotalTime - start).TotalMicroseconds / result.Evaluations:0.0} |"));
    }

    private sealed class Keep : ISearchLog
    {
        public List<double[]> Points { get; } = [];

        public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations) => Points.AddRange(points);
    }

    // Measures while the search still stands.
    private sealed class Watch(long most) : ISearchLog
    {
        public long Bytes { get; private set; }

        public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations)
        {
            if (firstIndex + points.Length >= most)
                Bytes = GC.GetTotalMemory(true);
        }
    }
}
