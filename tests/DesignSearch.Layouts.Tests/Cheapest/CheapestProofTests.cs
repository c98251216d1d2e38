using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Cheapest;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Certify;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Proof;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>The cheapest layout that holds, proved, against going through all; what is planted is found.</summary>
public sealed class CheapestProofTests
{
    [Theory]
    [InlineData(4200)]
    [InlineData(700)]
    [InlineData(400)]
    [InlineData(250)]
    [InlineData(150)]
    public void The_proof_comes_to_what_going_through_all_comes_to(int budget)
    {
        using var small = ProofScenario.Small();
        var assessor = WithBudget(small, budget);
        var all = new SearchEngine(new LayoutProblem(assessor), new() { MaxEvaluations = 200_000, EnumerateUpTo = 200_000, BlockSize = 64, Threads = 2 }).Run();
        Assert.Equal(StopReason.Enumerated, all.StoppedBecause);
        var cheapest = all.Front.Where(p => p.Evaluation.Objectives[1] == 0).Select(p => p.Evaluation.Objectives[0]).DefaultIfEmpty(double.PositiveInfinity).Min();
        var proof = new CheapestProver(new CheapestLayouts(assessor), 100_000, 1_000_000, 2).Run(null, double.PositiveInfinity);
        Assert.True(proof.IsComplete);
        Assert.Equal(cheapest, proof.Cost);
        Assert.Equal(cheapest, proof.Bound);
        Assert.True(proof.Simulations < all.Evaluations / 2, FormattableString.Invariant($"{proof.Simulations} of {all.Evaluations}"));
    }

    // The search is told of a dear layout only; the cheaper one that it missed comes to light, and is proved.
    [Fact]
    public void A_cheaper_layout_that_was_missed_is_found()
    {
        using var small = ProofScenario.Large();
        var assessor = WithBudget(small, 4200);
        var best = new CheapestProver(new CheapestLayouts(assessor), 100_000, 1_000_000, 2).Run(null, double.PositiveInfinity);
        Assert.True(best.IsComplete);
        var (certificate, better, _) = new Certifier(assessor, 2).Of((decimal)best.Cost + 1, [], [], null, CancellationToken.None);
        Assert.True(certificate.IsProved);
        Assert.Equal((decimal)best.Cost, certificate.Found);
        Assert.Equal(new LayoutSpace(assessor.Scenario).At(best.Best!), better);
        Assert.StartsWith("No cheaper layout of your parts holds (by bounds that are tested", certificate.Sentence, StringComparison.Ordinal);
        // And nothing is found under it.
        Assert.Null(new Certifier(assessor, 1).Of((decimal)best.Cost, [], [], null, CancellationToken.None).Better);
    }

    // Each way asked about on the way comes to what a proof of that way alone comes to.
    [Fact]
    public void Ways_are_proved_beside_the_answer()
    {
        using var small = ProofScenario.Small();
        var assessor = WithBudget(small, 4200);
        var ways = WayClass.All(assessor.Scenario);
        Assert.Contains(ways, w => w.Key == "without lining");
        Assert.Contains(ways, w => w.Key == "fixed");
        var all = new Log();
        new SearchEngine(new LayoutProblem(assessor), new() { MaxEvaluations = 200_000, EnumerateUpTo = 200_000, BlockSize = 64, Threads = 2 }).Run(log: all);
        var space = new LayoutSpace(assessor.Scenario);
        var holding = all.Points.Where(p => p.Evaluation.TotalViolation == 0 && p.Evaluation.Objectives[1] == 0).Select(p => (Layout: space.At(p.Point), Cost: p.Evaluation.Objectives[0])).ToList();
        var (certificate, better, met) = new Certifier(assessor, 2).Of(null, [.. ways.Select(w => (w, (decimal?)null))], [], null, CancellationToken.None);
        Assert.Equal((decimal)holding.Min(h => h.Cost), certificate.Found);
        Assert.NotNull(better);
        Assert.Equal(ways.Count, certificate.Ways.Count);
        foreach (var (way, bound) in ways.Zip(certificate.Ways))
        {
            var costs = holding.Where(h => way.Holds(h.Layout)).Select(h => (decimal?)h.Cost).ToList();
            Assert.Equal((way.Key, costs.Min(), true), (bound.Way, bound.NoneBelow, bound.IsProvedWithoutCollector));
            Assert.Equal(costs.Count > 0, met.Any(way.Holds));
        }

        Assert.Contains(certificate.Ways, w => w.NoneBelow is null);
        Assert.Contains(certificate.Ways, w => w.NoneBelow > certificate.Found);
    }

    [Fact]
    public void Layouts_that_were_tried_and_contradict_the_bounds_forbid_a_certificate()
    {
        using var small = ProofScenario.Small();
        var assessor = WithBudget(small, 4200);
        double[] bare = new double[new LayoutSpace(assessor.Scenario).Variables.Count];
        var (certificate, _, _) = new Certifier(assessor, 1).Of(1, [], [(bare, new Evaluation([1, 0], [], 0))], null, CancellationToken.None);
        Assert.True(certificate.IsProved);
        Assert.False(new CheapestLayouts(assessor).Contradicts(bare));
    }

    [Fact]
    public void Bytes_do_not_depend_on_threads()
    {
        using var small = ProofScenario.Large();
        var assessor = WithBudget(small, 4200);
        CheapestProof Run(int threads) => new CheapestProver(new CheapestLayouts(assessor), 600, 100_000, threads).Run(null, double.PositiveInfinity);
        CheapestProof one = Run(1), eight = Run(8);
        Assert.Equal(one with { Best = null, Aims = [] }, eight with { Best = null, Aims = [] });
        Assert.Equal(one.Best, eight.Best);
    }

    private static LayoutAssessor WithBudget(SmallScenario small, int budget)
    {
        var scenario = small.Read();
        scenario = scenario with { Money = scenario.Money with { Budget = budget } };
        return new(scenario, WinterSet.Make(scenario));
    }

    private sealed class Log : ISearchLog
    {
        public List<(double[] Point, Evaluation Evaluation)> Points { get; } = [];

        public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations)
        {
            for (var i = 0; i < points.Length; i++)
                Points.Add(((double[])points[i].Clone(), evaluations[i]));
        }
    }
}
