using System.Diagnostics;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Season;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Benchmarks;

/// <summary>How much of a search is simulation: the search of a run folder on one and on two threads, and the same layouts through the kernel alone on one thread, in turn.</summary>
internal static class SearchShare
{
    private const int Block = 16;

    public static void Run(string folder, int evaluations, int rounds)
    {
        var scenario = ScenarioReader.Read(folder);
        var winters = WinterSet.Make(scenario);
        Console.WriteLine($"# {folder}: {evaluations} evaluations of {winters.Winters.Count} winters, blocks of {Block}");
        Console.WriteLine("| round | kernel, 1 thread [s] | search, 1 thread [s] | search, 2 threads [s] | of twice the kernel's rate [%] |");
        Console.WriteLine("| --- | --- | --- | --- | --- |");
        for (var round = 0; round <= rounds; round++)
        {
            var (one, points) = Search(scenario, winters, evaluations, 1);
            var (two, _) = Search(scenario, winters, evaluations, 2);
            var kernel = Kernel(scenario, winters, points);
            if (round > 0)
                Console.WriteLine(FormattableString.Invariant($"| {round} | {kernel:0.00} | {one:0.00} | {two:0.00} | {100 * kernel / 2 / two:0} |"));
        }
    }

    private static (double Seconds, List<double[]> Points) Search(Scenario scenario, WinterSet winters, int evaluations, int threads)
    {
        var problem = new LayoutProblem(new LayoutAssessor(scenario, winters));
        var log = new Points();
        var watch = Stopwatch.StartNew();
        new SearchEngine(problem, new() { Seed = 1, MaxEvaluations = evaluations, BlockSize = Block, Threads = threads, BestByMerit = scenario.Search.Ranked }).Run(log: log);
        return (watch.Elapsed.TotalSeconds, log.All);
    }

    private static double Kernel(Scenario scenario, WinterSet winters, List<double[]> points)
    {
        var space = new LayoutSpace(scenario);
        var assessor = new LayoutAssessor(scenario, winters);
        var built = points.Select(p => assessor.Price(space.At(p)).Built).ToList();
        var cases = winters.Winters.Select(w => built.Select(b => new LayoutCase(b.Installation, assessor.Plane(b, w.Winter))).ToArray()).ToList();
        var outcomes = new Outcome[Block];
        var watch = Stopwatch.StartNew();
        for (var w = 0; w < cases.Count; w++)
        {
            for (var done = 0; done < points.Count; done += Block)
                SeasonSimulator.Run(winters.Winters[w].Forcing, cases[w].AsSpan(done, Math.Min(Block, points.Count - done)), outcomes);
        }

        return watch.Elapsed.TotalSeconds;
    }

    private sealed class Points : ISearchLog
    {
        public List<double[]> All { get; } = [];

        public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations) => All.AddRange(points);
    }
}
