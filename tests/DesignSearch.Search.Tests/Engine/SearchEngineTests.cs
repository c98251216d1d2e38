using DesignSearch.Search.Engine;
using DesignSearch.Search.Space;
using Xunit;

namespace DesignSearch.Search.Tests;

public class SearchEngineTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(16)]
    [InlineData(64)]
    public void Threads_do_not_change_a_byte(int block)
    {
        var first = Run(new() { MaxEvaluations = 600, BlockSize = block, Threads = 1 });
        Assert.Equal(first, Run(new() { MaxEvaluations = 600, BlockSize = block, Threads = 2 }));
        Assert.Equal(first, Run(new() { MaxEvaluations = 600, BlockSize = block, Threads = 8 }));
        Assert.NotEqual(first, Run(new() { MaxEvaluations = 600, BlockSize = block, Seed = 2 }));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(333)]
    [InlineData(600)]
    public void A_resumed_run_equals_the_unbroken_one(int kept)
    {
        var settings = new SearchSettings { MaxEvaluations = 600, BlockSize = 16 };
        var whole = new MemoryLog();
        var problem = new CatalogueProblem();
        var unbroken = new SearchEngine(problem, settings).Run(log: whole);
        var rest = new MemoryLog();
        var again = new CatalogueProblem();
        var resumed = new SearchEngine(again, settings).Run(log: rest, replay: whole.Entries.Take(kept));
        Assert.Equal(Text(unbroken), Text(resumed));
        Assert.Equal(600 - kept, again.Started);
        Assert.Equal(whole.Entries.Skip(kept).Select(e => string.Join(' ', e.Point)), rest.Entries.Select(e => string.Join(' ', e.Point)));
    }

    [Fact]
    public void A_replay_of_another_seed_is_refused()
    {
        var log = new MemoryLog();
        new SearchEngine(new CatalogueProblem(), new() { MaxEvaluations = 50 }).Run(log: log);
        Assert.Throws<InvalidDataException>(() => new SearchEngine(new CatalogueProblem(), new() { MaxEvaluations = 50, Seed = 9 }).Run(replay: log.Entries));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void No_point_is_evaluated_twice_and_none_that_the_screen_refuses(bool screened)
    {
        var log = new MemoryLog();
        var problem = new CatalogueProblem(screened: screened);
        var result = new SearchEngine(problem, new() { MaxEvaluations = 3000 }).Run(log: log);
        Assert.Equal(3000, problem.Started);
        Assert.Equal(3000, result.Evaluations);
        Assert.Equal(3000, log.Entries.Select(e => string.Join(' ', e.Point)).Distinct().Count());
        Assert.Equal(StopReason.Budget, result.StoppedBecause);
        if (screened)
            Assert.All(log.Entries, e => Assert.Equal(0, e.Evaluation.TotalViolation));
        var space = new SearchSpace(problem.Variables);
        Assert.All(log.Entries, e =>
        {
            var canonical = (double[])e.Point.Clone();
            space.Canonicalise(canonical);
            Assert.Equal(canonical, e.Point);
        });
    }

    [Fact]
    public void A_small_space_is_enumerated_and_called_exact()
    {
        var problem = new FormulaProblem(FormulaProblem.Whole(20, 20), 2, 1, x => ([x[0], (x[1] - 3) * (x[1] - 3) - x[0]], [Math.Max(0, x[0] - 15)]));
        var result = new SearchEngine(problem, new() { EnumerateUpTo = 400 }).Run();
        Assert.True(result.IsExact);
        Assert.Equal(StopReason.Enumerated, result.StoppedBecause);
        Assert.Equal(400, result.Evaluations);
        Assert.Equal(Enumerable.Range(0, 16).Select(x => (double)x), result.Front.Select(p => p.Evaluation.Objectives[0]));
    }

    [Fact]
    public void It_stops_when_told()
    {
        var problem = Continuous.Zdt(1);
        var asked = 0;
        Assert.Equal(StopReason.Time, new SearchEngine(problem, new() { TimeIsUp = () => ++asked > 3 }).Run().StoppedBecause);
        Assert.Equal(StopReason.Cancelled, new SearchEngine(problem, new()).Run(cancel: new(true)).StoppedBecause);
        Assert.Equal(StopReason.Target, new SearchEngine(problem, new() { TargetHypervolume = 1.1 }).Run().StoppedBecause);
        var still = new SearchEngine(new CatalogueProblem(), new() { Stagnation = 1e-4, StagnationEvaluations = 1000, MaxEvaluations = 50_000 }).Run();
        Assert.Equal(StopReason.Stagnation, still.StoppedBecause);
        Assert.True(still.Evaluations < 50_000);
    }

    [Fact]
    public void Points_are_kept_by_merit_too()
    {
        var log = new MemoryLog();
        var problem = new MeritProblem();
        var result = new SearchEngine(problem, new() { MaxEvaluations = 500, BestByMerit = 12 }).Run(log: log);
        var expected = log.Entries.Where(e => e.Evaluation.TotalViolation == 0).Select(e => e.Evaluation.Merit).OrderDescending().Take(12);
        Assert.Equal(expected, result.BestByMerit.Select(p => p.Evaluation.Merit));
    }

    private static string Run(SearchSettings settings)
    {
        var log = new MemoryLog();
        var result = new SearchEngine(new CatalogueProblem(), settings).Run(log: log);
        return Text(result) + string.Join('\n', log.Entries.Select(e => string.Join(' ', e.Point)));
    }

    private static string Text(SearchResult result) =>
        string.Join('\n', result.Front.Concat(result.BestByMerit).Select(p => $"{p.Index}: {string.Join(' ', p.Point)}: {string.Join(' ', p.Evaluation.Objectives)}"))
        + string.Join(' ', result.HypervolumeTrend) + result.StoppedInWords;

    private sealed class MeritProblem : IProblem
    {
        private readonly CatalogueProblem inner = new();

        public IReadOnlyList<Variable> Variables => inner.Variables;

        public IReadOnlyList<string> Objectives => inner.Objectives;

        public IReadOnlyList<string> Constraints => inner.Constraints;

        public void Screen(ReadOnlySpan<double> point, Span<double> objectiveBounds, Span<double> violations) => inner.Screen(point, objectiveBounds, violations);

        public void Evaluate(ReadOnlySpan<double[]> points, Span<Evaluation> evaluations)
        {
            inner.Evaluate(points, evaluations);
            foreach (ref var evaluation in evaluations)
                evaluation = evaluation with { Merit = (120 - evaluation.Objectives[1]) / evaluation.Objectives[0] };
        }
    }
}
