using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Space;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>A screen that stops half-way must never say anything that the whole screen would not.</summary>
public sealed class EarlyScreenTests
{
    private static readonly Lazy<LayoutProblem> Wide = new(() =>
    {
        var read = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));
        return new(new LayoutAssessor(read, WinterSet.Make(read)));
    });

    [Fact]
    public void What_is_known_half_way_is_what_the_end_says()
    {
        var problem = Wide.Value;
        var space = new SearchSpace(problem.Variables);
        var random = new Random(7);
        var (stopped, whole) = (0, 0);
        for (var draw = 0; draw < 3000; draw++)
        {
            double[] point = [.. problem.Variables.Select(v => (double)random.Next(v.Levels))];
            space.Canonicalise(point);
            var (bounds, early, all) = (new double[2], new double[problem.Constraints.Count], new double[problem.Constraints.Count]);
            problem.Screen(point, bounds, all);
            // Twice a point's own sum, the sum itself, and a part of it: the last two may stop, the first may not.
            foreach (var share in new[] { 2, 1, 0.3 })
            {
                Array.Clear(early);
                var (enough, ownBounds) = (share * all.Sum(), new double[2]);
                if (enough == 0)
                    continue;
                if (problem.ScreenUntil(point, ownBounds, early, enough))
                {
                    whole++;
                    Assert.Equal(all, early);
                    Assert.Equal(bounds, ownBounds);
                    continue;
                }

                stopped++;
                Assert.True(early.Sum() >= enough && share <= 1);
                Assert.All(early.Zip(all), v => Assert.True(v.First == 0 || v.First == v.Second));
                Assert.Equal(new double[2], ownBounds);
            }
        }

        Assert.True(stopped > 2000 && whole > 2000, FormattableString.Invariant($"{stopped} stopped, {whole} went to the end"));
    }

    [Fact]
    public void A_search_that_may_stop_half_way_takes_the_same_steps()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var problem = new LayoutProblem(new LayoutAssessor(scenario, WinterSet.Make(scenario)));
        // Short of the end of the space, which a problem with bounds comes to by another way than one without.
        var settings = new SearchSettings { MaxEvaluations = 80, EnumerateUpTo = 0 };
        var (early, late) = (new SearchEngine(problem, settings).Run(), new SearchEngine(new Plain(problem), settings).Run());
        Assert.Equal(late.Front.Select(p => (p.Index, p.Evaluation.Objectives[0], p.Evaluation.Objectives[1])), early.Front.Select(p => (p.Index, p.Evaluation.Objectives[0], p.Evaluation.Objectives[1])));
        Assert.Equal((80, late.DistinctPoints), (early.Evaluations, early.DistinctPoints));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(40)]
    public void However_the_block_is_shared_out_each_layout_gets_its_own_bits(int count)
    {
        var problem = Wide.Value;
        var space = new SearchSpace(problem.Variables);
        var random = new Random(count);
        var points = new double[count][];
        for (var i = 0; i < count; i++)
        {
            points[i] = [.. problem.Variables.Select(v => (double)random.Next(v.Levels))];
            space.Canonicalise(points[i]);
        }

        Evaluation[] Of(int threads)
        {
            var made = new Evaluation[count];
            var work = problem.Begin(points, threads);
            Parallel.For(0, work.Pieces, new ParallelOptions { MaxDegreeOfParallelism = threads }, work.Do);
            work.Finish(made);
            return made;
        }

        var one = Of(1);
        foreach (var threads in new[] { 2, 3, 4, 5 })
        {
            Assert.All(one.Zip(Of(threads)), e =>
            {
                Assert.Equal(e.First.Objectives, e.Second.Objectives);
                Assert.Equal(e.First.Violations, e.Second.Violations);
                Assert.Equal(e.First.Merit, e.Second.Merit);
            });
        }
    }

    private sealed class Plain(IProblem inner) : IProblem
    {
        public IReadOnlyList<Variable> Variables => inner.Variables;

        public IReadOnlyList<string> Objectives => inner.Objectives;

        public IReadOnlyList<string> Constraints => inner.Constraints;

        public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations) => inner.Screen(point, objectiveBounds, violations);

        public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations) => inner.Evaluate(points, evaluations);
    }
}
