using BenchmarkDotNet.Attributes;

namespace DesignSearch.Benchmarks;

/// <summary>Time of the kernel per layout and winter, by lanes and batches in turn.</summary>
[BenchmarkCategory("season")]
public class SeasonBenchmarks
{
    private readonly SeasonWork work = new(withBenches: true);

    /// <summary>Batches in turn and lanes of each.</summary>
    [Params("2 x 8", "2 x 4", "2 x 1", "1 x 8", "1 x 4", "1 x 1")]
    public string Form { get; set; } = "";

    [Benchmark(OperationsPerInvoke = 32)]
    public void Winter()
    {
        var (batches, lanes) = (Form[0] - '0', Form[^1] - '0');
        work.Run(32, batches * lanes, lanes);
    }
}
