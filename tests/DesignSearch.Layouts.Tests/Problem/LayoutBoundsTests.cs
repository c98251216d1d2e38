using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Space;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>The declaration on which a proof of a front of layouts stands: no layout of a box is better than the box's bound.</summary>
public sealed class LayoutBoundsTests
{
    [Theory]
    [InlineData("middling", 600)]
    [InlineData("large", 300)]
    [InlineData("winter", 60)]
    [InlineData("heat pumps", 150)]
    [InlineData("day stores", 150)]
    [InlineData("own work at a rate", 300)]
    public void No_layout_of_a_random_box_is_better_than_its_bound(string name, int pairs)
    {
        using var small = name switch { "middling" => ProofScenario.Middling(), "large" => ProofScenario.Large(), "heat pumps" => ProofScenario.HeatPumps(), "day stores" => ProofScenario.DayStores(), "own work at a rate" => ProofScenario.OwnWork(), _ => Winter() };
        var breaches = Breaches(new LayoutProblem(Assessor(small)), pairs, "");
        Assert.True(breaches.Count == 0, FormattableString.Invariant($"{breaches.Count} of {pairs}:\n{string.Join('\n', breaches.Take(5))}"));
    }

    [Fact]
    public void The_scenarios_are_as_large_as_is_said_of_them()
    {
        using SmallScenario middling = ProofScenario.Middling(), large = ProofScenario.Large();
        Assert.Equal(1_402_920, new SearchSpace(new LayoutSpace(middling.Read()).Variables).Size);
        Assert.True(new SearchSpace(new LayoutSpace(large.Read()).Variables).Size > 1_000_000_000);
    }

    [Fact]
    public void A_choice_wrongly_declared_one_way_is_caught()
    {
        using var small = ProofScenario.Middling();
        Assert.NotEmpty(Breaches(new LayoutProblem(Assessor(small)), 300, "heater"));
    }

    [Fact]
    public void Branch_and_bound_proves_the_front_that_going_through_all_finds()
    {
        using var small = ProofScenario.Small();
        var problem = new LayoutProblem(Assessor(small));
        var all = new SearchEngine(problem, new() { MaxEvaluations = 200_000, EnumerateUpTo = 200_000, BlockSize = 64, Threads = 2 }).Run();
        // So few that the search itself does not come to the end of what is left.
        var proved = new SearchEngine(problem, new() { MaxEvaluations = 100, EnumerateUpTo = 0, ProofSimulations = 20_000 }).Run();
        Assert.Equal(StopReason.Enumerated, all.StoppedBecause);
        Assert.True(proved.IsExact, proved.StoppedInWords);
        Assert.Equal(Figures(all), Figures(proved));
        Validation.Within("search greenhouse proof", "simulations to prove the front, as a share of going through all", 0, 0.5, (double)(proved.Evaluations + proved.Proof!.Bounds) / all.Evaluations,
            FormattableString.Invariant($"all {all.Evaluations} layouts that pass the first checks simulated; the same {all.Front.Count} points"), "LayoutBounds");
    }

    private static LayoutAssessor Assessor(SmallScenario small)
    {
        var scenario = small.Read();
        return new(scenario, WinterSet.Make(scenario));
    }

    // A whole winter, with the hard one beside the typical.
    private static SmallScenario Winter() => new(
        ("perimeter_board = \"none\"", "perimeter_board = [\"none\", \"edge-board-50\"]"),
        ("wind_break = \"none\"", "wind_break = [\"none\", \"wind-net-half\"]"));

    private static IEnumerable<(double, double)> Figures(SearchResult result) => result.Front.Select(p => (p.Evaluation.Objectives[0], p.Evaluation.Objectives[1]));

    // Random boxes, and a random layout in each: what is better than the bound says, or passes where the box is refused.
    private static List<string> Breaches(LayoutProblem problem, int pairs, string free)
    {
        var random = new Random(7);
        var space = new SearchSpace(problem.Variables);
        var found = new List<string>();
        for (var pair = 0; pair < pairs; pair++)
        {
            int[] low = new int[space.Count], high = new int[space.Count];
            var point = new double[space.Count];
            for (var i = 0; i < low.Length; i++)
            {
                int a = random.Next(space.Variables[i].Levels), b = random.Next(space.Variables[i].Levels);
                (low[i], high[i]) = problem.ActsOneWay[i] || space.Variables[i].Name == free ? (Math.Min(a, b), Math.Max(a, b)) : (a, a);
                point[i] = random.Next(low[i], high[i] + 1);
            }

            space.Canonicalise(point);
            for (var i = 0; i < low.Length; i++)
            {
                if (!problem.ActsOneWay[i] && space.Variables[i].Name != free)
                    low[i] = high[i] = (int)point[i];
            }

            double[] cheap = new double[2], bounds = new double[2];
            var possible = problem.BoundCheaply(new(low, high), cheap);
            if (possible)
                problem.BoundBySimulation(new(low, high), bounds);
            var real = new Evaluation[1];
            problem.Evaluate([point], real);
            var (cost, frost) = (real[0].Objectives[0], real[0].Objectives[1]);
            if (possible ? cost < bounds[0] || cost < cheap[0] || frost < bounds[1] : real[0].TotalViolation == 0)
                found.Add(FormattableString.Invariant($"{string.Join(',', low)} to {string.Join(',', high)}: {cost} and {frost} at {string.Join(',', point)}, bounds {cheap[0]}, {bounds[0]} and {bounds[1]}{(possible ? "" : ", refused")}"));
        }

        return found;
    }
}
