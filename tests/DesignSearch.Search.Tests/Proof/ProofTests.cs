using DesignSearch.Search.Engine;
using DesignSearch.Search.Moves;
using DesignSearch.Search.Space;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Search.Tests;

public class ProofTests
{
    [Theory]
    [InlineData(20240001)]
    [InlineData(7)]
    [InlineData(77)]
    [InlineData(777)]
    public void No_point_of_a_box_is_better_than_its_bound(int table) => Assert.Equal(0, Breaches(new((ulong)table), free: -1));

    [Fact]
    public void A_variable_wrongly_declared_one_way_is_caught() => Assert.NotEqual(0, Breaches(new(), free: 2));

    [SkippableFact]
    public void A_search_and_branch_and_bound_prove_the_catalogue_front()
    {
        Skip.IfNot(Longer.IsOn, "A long run (DESIGNSEARCH_LONG=1); the shorter proof is that of a space with sleepers.");
        var result = new SearchEngine(new CatalogueProblem(), new() { MaxEvaluations = 3000, ProofSimulations = 3_000_000 }).Run();
        Assert.True(result.IsExact, result.StoppedInWords);
        Assert.Equal(0, result.Proof!.Gap);
        var known = KnownFront.All["catalogue"];
        Validation.Equal("search proof catalogue", "points of the proved front", 61, known.Found([.. result.Front.Select(p => p.Evaluation.Objectives)]), 0, "all 313 528 320 combinations run one by one", "Prover");
        Assert.Equal(61, result.Front.Count);
    }

    [Theory]
    [InlineData(2000, 10_000_000)]
    [InlineData(3_000_000, 20_000)]
    public void What_is_not_proved_is_not_called_exact_and_states_its_gap(long simulations, long boxes)
    {
        var result = new SearchEngine(new CatalogueProblem(), new() { MaxEvaluations = 500, ProofSimulations = simulations, ProofBoxes = boxes }).Run();
        Assert.False(result.IsExact);
        if (simulations == 2000)
            Assert.InRange(result.Proof!.Simulations, 2000, 2100);
        else
            Assert.InRange(result.Proof!.Boxes, boxes, boxes + 100);
        Assert.Contains("open", result.StoppedInWords, StringComparison.Ordinal);

        // The gap must hold what is truly missing.
        var known = KnownFront.All["catalogue"];
        var missing = 1 - known.Share(result.Front.Select(p => p.Evaluation.Objectives));
        Assert.InRange(result.Proof.Gap, missing * 0.9, 0.9);
    }

    [Fact]
    public void A_proof_on_a_space_with_sleepers_finds_the_front_of_going_through_all()
    {
        var all = new SearchEngine(new StallProblem(), new() { MaxEvaluations = 5000, EnumerateUpTo = 5000, BlockSize = 7 }).Run();
        Assert.Equal(StopReason.Enumerated, all.StoppedBecause);
        Assert.Equal(3072, all.DistinctPoints);
        Assert.True(all.IsExact);
        var proved = new SearchEngine(new StallProblem(), new() { MaxEvaluations = 30, EnumerateUpTo = 0, ProofSimulations = 5000 }).Run();
        Assert.True(proved.IsExact, proved.StoppedInWords);
        Assert.Contains("proved that nothing better exists", proved.StoppedInWords, StringComparison.Ordinal);
        Assert.Equal(all.Front.Select(p => p.Evaluation.Objectives), proved.Front.Select(p => p.Evaluation.Objectives));
        Assert.Equal(30 + proved.Proof!.Evaluations, proved.Evaluations);
        Assert.InRange(proved.Proof.Evaluations, 1, all.Evaluations / 2);
        Assert.Equal(proved.Proof.Bounds + proved.Proof.Evaluations, proved.Proof.Simulations);
        Assert.Equal(0, proved.Proof.Gap);
    }

    [Fact]
    public void A_proof_is_the_same_again()
    {
        SearchResult Run(int threads) => new SearchEngine(new CatalogueProblem(), new() { MaxEvaluations = 500, ProofSimulations = 5000, Threads = threads }).Run();
        Assert.Equal(Run(1).Proof, Run(2).Proof);
    }

    // Random boxes, and random points inside: how often a point is better than the bound says, or passes where the box is refused.
    private static int Breaches(CatalogueProblem problem, int free)
    {
        var random = new SplitMixStream(5, 0, 0);
        var space = new SearchSpace(problem.Variables);
        var breaches = 0;
        for (var pair = 0; pair < 20_000; pair++)
        {
            int[] low = new int[12], high = new int[12];
            var point = new double[12];
            for (var i = 0; i < 12; i++)
            {
                int a = random.Below(problem.Variables[i].Levels), b = random.Below(problem.Variables[i].Levels);
                (low[i], high[i]) = problem.ActsOneWay[i] || i == free ? (Math.Min(a, b), Math.Max(a, b)) : (a, a);
                point[i] = low[i] + random.Below(high[i] - low[i] + 1);
            }

            if (low[5] == 0)
                low[6] = 0;
            space.Canonicalise(point);
            double[] bounds = new double[2], passes = new double[2];
            problem.BoundBySimulation(new(low, high), bounds);
            var possible = problem.BoundCheaply(new(low, high), passes);
            var cost = problem.Cost(point);
            if (cost < bounds[0] || problem.Unmet(point) < bounds[1] || (!possible && problem.Violation(point, cost) == 0))
                breaches++;
        }

        return breaches;
    }
}
