using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Space;
using DesignSearch.Search.Tests;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>An invented greenhouse of which every layout is simulated first: ours and an outside program beside it, with the same number of simulations.</summary>
public sealed class LiveGreenhouseTests
{
    private const int Seeds = 7;
    private const int Simulations = 300;

    [SkippableFact]
    public void Median_share_of_the_exact_front_is_above_the_outside_nsga2()
    {
        using var small = ProofScenario.Small();
        var scenario = small.Read();
        var stored = new Stored(new LayoutProblem(new LayoutAssessor(scenario, WinterSet.Make(scenario))));
        var exact = KnownFront.Of(new SearchEngine(stored, new() { MaxEvaluations = 200_000, EnumerateUpTo = 200_000, BlockSize = 64, Threads = 2 }).Run().Front.Select(p => p.Evaluation.Objectives));
        double[] ours = [.. Enumerable.Range(1, Seeds).Select(seed => exact.Share(new SearchEngine(stored, new() { Seed = (ulong)seed, MaxEvaluations = Simulations, EnumerateUpTo = 0, BlockSize = 16 }).Run().Front.Select(p => p.Evaluation.Objectives))).Order()];
        var theirs = new List<double>();
        for (var seed = 1; seed <= Seeds; seed++)
        {
            var (found, missing) = OutsideNsga2.Run(stored, seed, Simulations, 40);
            if (found is null)
            {
                Assert.False(Environment.GetEnvironmentVariable("DESIGNSEARCH_NO_SKIP") == "1", missing);
                Skip.If(true, missing);
            }

            theirs.Add(exact.Share(found!));
        }

        theirs.Sort();
        Validation.Within("search live greenhouse", FormattableString.Invariant($"share of the exact hypervolume with {Simulations} simulations in blocks of 16, median of {Seeds} seeds"), Math.Max(0.99, theirs[Seeds / 2]), 1.00001, ours[Seeds / 2],
            FormattableString.Invariant($"every layout simulated; NSGA-II of Debian's python3-deap, population 40, every call counted, run beside it: {theirs[Seeds / 2]:0.0000}"), "SearchEngine.Run");
    }

    // Remembers what was simulated, so that no layout is simulated twice in all these runs.
    private sealed class Stored(LayoutProblem inner) : IProblem
    {
        private readonly System.Collections.Concurrent.ConcurrentDictionary<PointKey, Evaluation> known = new();

        public IReadOnlyList<Variable> Variables => inner.Variables;

        public IReadOnlyList<string> Objectives => inner.Objectives;

        public IReadOnlyList<string> Constraints => inner.Constraints;

        public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations) => inner.Screen(point, objectiveBounds, violations);

        public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
        {
            double[][] fresh = [.. points.ToArray().Where(p => !known.ContainsKey(SearchSpace.KeyOf(p)))];
            var results = new Evaluation[fresh.Length];
            inner.Evaluate(fresh, results);
            for (var i = 0; i < fresh.Length; i++)
                known[SearchSpace.KeyOf(fresh[i])] = results[i];
            for (var i = 0; i < points.Length; i++)
                evaluations[i] = known[SearchSpace.KeyOf(points[i])];
        }
    }
}
