using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Tests;

namespace DesignSearch.Benchmarks;

/// <summary>Published optima of one objective: how far above them searches end.</summary>
internal static class SingleCourses
{
    private static readonly (string Name, double Optimum, Func<IProblem> Make)[] Problems =
    [
        ("pressure vessel", 6059.714335, SingleOptima.PressureVessel), ("speed reducer", 2994.471, SingleOptima.SpeedReducer), ("tension spring", 0.01266523, SingleOptima.Spring),
        ("welded beam", 1.724852, SingleOptima.WeldedBeam), ("gear train", 2.700857e-12, SingleOptima.GearTrain),
    ];

    public static void Print(int seeds, int first, int most)
    {
        Console.WriteLine($"| problem | published | best of {seeds} | median | worst |");
        Console.WriteLine("|---|---|---|---|---|");
        foreach (var (name, optimum, make) in Problems)
        {
            double[] least = [.. Enumerable.Range(first, seeds)
                .Select(seed => new SearchEngine(make(), new() { Seed = (ulong)seed, MaxEvaluations = most, BlockSize = 1, EnumerateUpTo = 0 }).Run().Front)
                .Select(f => f.Count > 0 ? f[0].Evaluation.Objectives[0] : double.PositiveInfinity).Order()];
            Console.WriteLine(FormattableString.Invariant($"| {name} | {optimum:g7} | {least[0]:g7} | {least[seeds / 2]:g7} | {least[^1]:g7} |"));
        }
    }
}
