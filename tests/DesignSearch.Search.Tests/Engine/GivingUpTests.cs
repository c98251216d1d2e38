using DesignSearch.Search.Engine;
using DesignSearch.Search.Space;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>A search ends before its budget only once it knows that nothing is left, and says so only then.</summary>
public class GivingUpTests
{
    // Twelve levels-of-eight variables; what passes has the first few near the top, but the violation falls towards the bottom.
    private static ScreenedProblem Misleading(int bound) => new(
        Enumerable.Repeat(8, 12),
        x => Enumerable.Range(0, bound).All(i => x[i] >= 6) ? 0 : 1 + x.Sum(),
        x => [x.Sum(), x.Select((v, i) => (7 - v) * (7 - v) * (1 + (i % 3))).Sum()]);

    // A few points strewn by a hash: none says anything of the next.
    private static ScreenedProblem Strewn(params int[] levels) => new(
        levels,
        x => SearchSpace.KeyOf(x.ToArray()).High % 4001 == 7 ? 0 : 1 + (SearchSpace.KeyOf(x.ToArray()).Low % 100),
        x => [x.Sum(), SearchSpace.KeyOf(x.ToArray()).High % 10_007]);

    [Theory]
    [InlineData(4, 1)]
    [InlineData(4, 16)]
    [InlineData(6, 16)]
    public void A_misleading_violation_does_not_end_it(int bound, int block)
    {
        for (var seed = 1UL; seed <= 3; seed++)
        {
            var result = new SearchEngine(Misleading(bound), new() { Seed = seed, MaxEvaluations = 2000, BlockSize = block }).Run();
            Assert.Equal((StopReason.Budget, 2000), (result.StoppedBecause, result.Evaluations));
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void A_small_share_is_gone_through_to_the_last_and_called_exact(int seed)
    {
        var problem = Strewn(9, 10, 11, 12, 13, 14);
        var passing = new SearchSpace(problem.Variables).Points().Where(p => problem.Missed(p) == 0).ToArray();
        var front = KnownFront.Of(passing.Select(problem.Figures)).Points;
        var result = new SearchEngine(problem, new() { Seed = (ulong)seed, MaxEvaluations = 5000 }).Run();
        Assert.Equal(passing.Length, result.Evaluations);
        Assert.Equal(front, result.Front.Select(p => p.Evaluation.Objectives));
        Assert.Equal(StopReason.Exhausted, result.StoppedBecause);
        Assert.True(result.IsExact);
        Assert.Contains("exact", result.StoppedInWords, StringComparison.Ordinal);
    }

    // Twenty parts of ten sizes, 10^20 choices, of which the budget allows some hundreds: only bounds on boxes can go through them.
    [Fact]
    public void Bounds_go_through_what_is_far_too_many_to_look_at()
    {
        var problem = new TightBudget(20, 10, 3);
        var result = new SearchEngine(problem, new() { MaxEvaluations = 100_000 }).Run();
        Assert.Equal(StopReason.Exhausted, result.StoppedBecause);
        Assert.Equal(1771, result.Evaluations);
        Assert.True(result.IsExact);
    }

    [Fact]
    public void Where_nothing_turns_up_and_nothing_is_proved_it_says_that()
    {
        var problem = new ScreenedProblem(Enumerable.Repeat(20, 12), x => x.All(v => v == 13) ? 0 : 1 + x.Count(v => v != 4), x => [x[0], -x[0]]);
        var result = new SearchEngine(problem, new() { MaxEvaluations = 500 }).Run();
        Assert.Equal((StopReason.Unfound, 0), (result.StoppedBecause, result.Evaluations));
        Assert.False(result.IsExact);
        Assert.Contains("no proof", result.StoppedInWords, StringComparison.Ordinal);
        Assert.Equal(StopReason.Cancelled, new SearchEngine(problem, new()).Run(cancel: new(true)).StoppedBecause);
    }

    [Fact]
    public void What_the_front_covers_by_its_bounds_needs_no_evaluation_and_the_answer_is_exact()
    {
        // Both figures are known from the screen, so nothing that is beaten is ever evaluated.
        var problem = new ScreenedProblem(Enumerable.Repeat(7, 7), _ => 0, x => [x.Sum(), x.Sum(v => (6 - v) * (6 - v))], isKnown: true);
        var result = new SearchEngine(problem, new() { MaxEvaluations = 100_000, EnumerateUpTo = 0 }).Run();
        var front = KnownFront.Of(new SearchSpace(problem.Variables).Points().Select(problem.Figures)).Points;
        Assert.Equal(front, result.Front.Select(p => p.Evaluation.Objectives));
        Assert.Equal(StopReason.Exhausted, result.StoppedBecause);
        Assert.True(result.Evaluations < 20_000, FormattableString.Invariant($"{result.Evaluations}"));
    }

    // Each part of a higher size costs a unit more; the budget is a few units.
    private sealed class TightBudget(int parts, int sizes, int budget) : IBoundedProblem
    {
        public IReadOnlyList<Variable> Variables { get; } = FormulaProblem.Whole([.. Enumerable.Repeat(sizes, parts)]);

        public IReadOnlyList<string> Objectives { get; } = ["price", "lack"];

        public IReadOnlyList<string> Constraints { get; } = ["budget"];

        public IReadOnlyList<bool> ActsOneWay { get; } = [.. Enumerable.Repeat(true, parts)];

        public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations) =>
            violations[0] = Math.Max(0, point.ToArray().Sum() - budget);

        public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
        {
            for (var i = 0; i < points.Length; i++)
                evaluations[i] = new([points[i].Sum(), -points[i].Select((v, k) => v * (1 + (k % 5))).Sum()], [0]);
        }

        public bool BoundCheaply(LevelBox box, Span<double> objectiveBounds) => box.Low.Sum() <= budget;

        public void BoundBySimulation(LevelBox box, Span<double> objectiveBounds) => throw new InvalidOperationException("Nothing is to be proved.");
    }
}
