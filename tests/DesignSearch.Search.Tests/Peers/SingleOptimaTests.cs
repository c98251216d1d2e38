using DesignSearch.Search.Engine;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>The engine finds published optima of one objective; the best of nine seeds counts, as in the works themselves.</summary>
public class SingleOptimaTests
{
    [Theory]
    [InlineData("pressure vessel", 6059.714335, 0.0001, "Sandgren 1990; Kannan and Kramer 1994 (length up to 200)")]
    [InlineData("speed reducer", 2994.471, 0.00001, "Golinski 1970 (second shaft from 7.3)")]
    [InlineData("tension spring", 0.01266523, 0.001, "Arora 1989")]
    [InlineData("welded beam", 1.724852, 0.00001, "Ragsdell and Phillips 1976; Coello 2000")]
    [InlineData("gear train of one objective", 2.700857e-12, 0.000001, "Sandgren 1990; the next best is 2.307816e-11")]
    public void Found(string name, double optimum, double relative, string source)
    {
        double Least(int seed)
        {
            var result = new SearchEngine(Make(name), new() { Seed = (ulong)seed, MaxEvaluations = 30_000, EnumerateUpTo = 0 }).Run();
            return result.Front.Count > 0 ? result.Front[0].Evaluation.Objectives[0] : double.PositiveInfinity;
        }

        // The page tells of the long run; on a usual day the first of the nine that finds it is enough.
        if (!Longer.IsOn)
        {
            Assert.Contains(Enumerable.Range(1, 9), seed => Math.Abs(Least(seed) - optimum) <= relative * optimum);
            return;
        }

        var least = Enumerable.Range(1, 9).AsParallel().Min(Least);
        Validation.Equal($"search optimum {name}", "least objective of nine seeds, 30 000 evaluations each", optimum, least, relative * optimum, source, "SearchEngine.Run");
    }

    private static FormulaProblem Make(string name) => name switch
    {
        "pressure vessel" => SingleOptima.PressureVessel(),
        "speed reducer" => SingleOptima.SpeedReducer(),
        "welded beam" => SingleOptima.WeldedBeam(),
        "gear train of one objective" => SingleOptima.GearTrain(),
        _ => SingleOptima.Spring(),
    };
}
