using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>The engine finds published optima of one objective; the best of three seeds counts, as in the works themselves.</summary>
public class SingleOptimaTests
{
    [Theory]
    [InlineData("pressure vessel", 6059.714335, 0.002, "Sandgren 1990; Kannan and Kramer 1994 (length up to 200)")]
    [InlineData("speed reducer", 2994.471, 0.001, "Golinski 1970 (second shaft from 7.3)")]
    [InlineData("tension spring", 0.01266523, 0.002, "Arora 1989")]
    public void Found(string name, double optimum, double relative, string source)
    {
        var least = new ulong[] { 1, 2, 3 }.Min(seed =>
        {
            var result = new SearchEngine(Make(name), new() { Seed = seed, MaxEvaluations = 30_000, EnumerateUpTo = 0 }).Run();
            return result.Front.Count > 0 ? result.Front[0].Evaluation.Objectives[0] : double.PositiveInfinity;
        });
        Validation.Equal($"search optimum {name}", "least objective, 30 000 evaluations", optimum, least, relative * optimum, source);
    }

    private static FormulaProblem Make(string name) => name switch
    {
        "pressure vessel" => SingleOptima.PressureVessel(),
        "speed reducer" => SingleOptima.SpeedReducer(),
        _ => SingleOptima.Spring(),
    };
}
