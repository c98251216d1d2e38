using DesignSearch.Search.Engine;
using DesignSearch.Search.Indicators;
using Xunit;

namespace DesignSearch.Search.Tests;

public class StoppableTests
{
    [Fact]
    public void A_stopped_value_is_a_bound_and_never_a_result()
    {
        var log = new MemoryLog();
        var problem = new CatalogueProblem();
        var result = new SearchEngine(problem, new() { MaxEvaluations = 2000, BestByMerit = 0 }).Run(log: log);
        var stopped = log.Entries.Where(e => e.Evaluation.IsBound).ToArray();
        Assert.InRange(stopped.Length, 200, 1900);
        Assert.True(problem.Steps < 0.95 * 120 * 2000);
        Assert.DoesNotContain(result.Front, p => p.Evaluation.IsBound);
        Assert.All(stopped, e =>
        {
            Assert.True(problem.Unmet(e.Point) >= e.Evaluation.Objectives[1]);
            Assert.Contains(result.Front, f => Dominance.Covers(f.Evaluation.Objectives, e.Evaluation.Objectives));
        });
        Assert.All(log.Entries.Where(e => !e.Evaluation.IsBound), e => Assert.Equal(problem.Unmet(e.Point), e.Evaluation.Objectives[1]));
    }

    [Fact]
    public void Stopping_costs_hardly_any_quality()
    {
        double Share(ulong seed, int kept) => KnownFront.All["catalogue"].Share(new SearchEngine(new CatalogueProblem(), new() { Seed = seed, MaxEvaluations = 1000, BestByMerit = kept, BlockSize = 1 })
            .Run().Front.Select(p => p.Evaluation.Objectives));
        var without = Enumerable.Range(1, 9).Select(seed => Share((ulong)seed, 50)).Order().ElementAt(4);
        var with = Enumerable.Range(1, 9).Select(seed => Share((ulong)seed, 0)).Order().ElementAt(4);
        Assert.True(with > without - 0.01, FormattableString.Invariant($"{with} against {without}"));
    }

    [Fact]
    public void Nothing_is_stopped_where_points_are_kept_by_merit()
    {
        var log = new MemoryLog();
        new SearchEngine(new CatalogueProblem(), new() { MaxEvaluations = 500 }).Run(log: log);
        Assert.DoesNotContain(log.Entries, e => e.Evaluation.IsBound);
    }

    [Theory]
    [InlineData(0, "before it was beaten")]
    [InlineData(5, "evaluate to the end")]
    public void A_problem_that_gives_up_what_it_may_not_is_found_out(int kept, string words)
    {
        var engine = new SearchEngine(new GivesUpAtOnce(), new() { MaxEvaluations = 20, EnumerateUpTo = 0, BestByMerit = kept });
        Assert.Contains(words, Assert.Throws<InvalidOperationException>(() => engine.Run()).Message, StringComparison.Ordinal);
    }

    private sealed class GivesUpAtOnce : IStoppableProblem
    {
        public IReadOnlyList<Variable> Variables { get; } = [new() { Name = "x", Kind = VariableKind.Ordered, Levels = 40 }];

        public IReadOnlyList<string> Objectives { get; } = ["up", "down"];

        public IReadOnlyList<string> Constraints { get; } = [];

        public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations)
        {
        }

        public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
        {
            for (var i = 0; i < points.Length; i++)
                evaluations[i] = new([points[i][0], -points[i][0]], [], IsBound: true);
        }

        public void EvaluateUntil(ReadOnlySpan<double[]> points, ReadOnlySpan<double[]> limits, Span<Evaluation> evaluations) => Evaluate(points, evaluations);
    }
}
