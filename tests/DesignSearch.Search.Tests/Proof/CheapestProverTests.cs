using DesignSearch.Search.Proof;
using DesignSearch.Search.Space;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>Branch and bound for the cheapest point that serves, on an invented shelf of which the answer can be counted out.</summary>
public sealed class CheapestProverTests
{
    [Fact]
    public void It_comes_to_the_cheapest_and_proves_it()
    {
        var shelf = new Shelf();
        var proof = new CheapestProver(shelf, 10_000, 10_000, 1).Run(null, double.PositiveInfinity);
        Assert.True(proof.IsComplete);
        Assert.Equal(shelf.Cheapest, proof.Cost);
        Assert.Equal(shelf.Cheapest, proof.Bound);
        Assert.True(proof.Simulations < 300, FormattableString.Invariant($"{proof.Simulations}"));
    }

    [Fact]
    public void What_is_known_already_is_proved_without_being_found_again()
    {
        var shelf = new Shelf();
        var proof = new CheapestProver(shelf, 10_000, 10_000, 1).Run([1, 2, 3], shelf.Cheapest);
        Assert.True(proof.IsComplete);
        Assert.Equal([1, 2, 3], proof.Best!);
    }

    [Theory]
    [InlineData(0, 1_000_000)]
    [InlineData(1_000_000, 3)]
    public void Cut_short_it_says_below_which_cost_there_is_none(long simulations, long boxes)
    {
        var shelf = new Shelf();
        var proof = new CheapestProver(shelf, simulations, boxes, 1).Run(null, double.PositiveInfinity);
        Assert.False(proof.IsComplete);
        Assert.True(proof.Bound <= shelf.Cheapest);
        Assert.False(proof.IsStopped);
    }

    [Fact]
    public void Stopped_by_hand_it_keeps_what_it_knows()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        var proof = new CheapestProver(new Shelf(), 1000, 1000, 1).Run([0, 0, 0], 500, null, source.Token);
        Assert.True(proof.IsStopped);
        Assert.False(proof.IsComplete);
        Assert.Equal(500, proof.Cost);
    }

    [Fact]
    public void Where_nothing_serves_that_is_proved()
    {
        var proof = new CheapestProver(new Shelf { Needed = 1000 }, 10_000, 10_000, 1).Run(null, double.PositiveInfinity);
        Assert.True(proof.IsComplete);
        Assert.Null(proof.Best);
        Assert.Equal(double.PositiveInfinity, proof.Bound);
    }

    // Questions about some of the points are answered in the same turn, each as if it had been asked alone.
    [Fact]
    public void Questions_about_some_of_the_points_are_answered_on_the_way()
    {
        var shelf = new Shelf();
        IReadOnlySet<int>?[] few = [null, new HashSet<int> { 8, 9 }, null], none = [new HashSet<int> { 0 }, new HashSet<int> { 0 }, new HashSet<int> { 0 }];
        var proof = new CheapestProver(shelf, 10_000, 10_000, 1).Run(
            shelf.All, null, double.PositiveInfinity, [new(few, double.PositiveInfinity), new(few, shelf.CheapestOf(few)), new(none, double.PositiveInfinity)]);
        Assert.Equal((true, shelf.Cheapest), (proof.IsComplete, proof.Cost));
        Assert.True(shelf.CheapestOf(few) > shelf.Cheapest);
        Assert.Equal((shelf.CheapestOf(few), shelf.CheapestOf(few), true), (proof.Aims[0].Bound, proof.Aims[0].Cost, proof.Aims[0].IsComplete));
        Assert.Contains((int)proof.Aims[0].Best![1], few[1]!);
        Assert.Equal(proof.Aims[0].Bound, proof.Aims[1].Bound);
        Assert.Equal((double.PositiveInfinity, double.PositiveInfinity), (proof.Aims[2].Bound, proof.Aims[2].Cost));
        Assert.Null(proof.Aims[2].Best);
        // Cut short, what is said is a bound all the same.
        var cut = new CheapestProver(shelf, 10_000, 40, 1).Run(shelf.All, null, double.PositiveInfinity, [new(few, double.PositiveInfinity)]);
        Assert.False(cut.Aims[0].IsComplete);
        Assert.InRange(cut.Aims[0].Bound, 1, shelf.CheapestOf(few));
    }

    // Three shelves of ten boards: a board's price rises with its level, its strength jumps about; strength is known by simulation only.
    private sealed class Shelf : ICheapestProblem
    {
        private const int Shelves = 3;

        private readonly Variable[] variables = [.. Enumerable.Range(0, Shelves).Select(i => new Variable { Name = $"board {i}", Kind = VariableKind.Ordered, Levels = 10 })];

        public int Needed { get; init; } = 24;

        public double Cheapest => new SearchSpace(variables).Points().Where(p => p.Select(Strength).Sum() >= Needed).Min(p => p.Select(Price).Sum());

        public double CheapestOf(IReadOnlySet<int>?[] levels) =>
            new SearchSpace(variables).Points().Where(p => p.Select(Strength).Sum() >= Needed && p.Select((l, i) => levels[i]?.Contains((int)l) ?? true).All(f => f)).Min(p => p.Select(Price).Sum());

        public LevelSets All => LevelSets.All(variables);

        public double Cheaply(LevelSets set) => Enumerable.Range(0, Shelves).Sum(i => Price(set[i][0]));

        public bool CanSimulate(LevelSets set) => set.IsSingle(0);

        public void Simulate(ReadOnlySpan<LevelSets> sets, Span<double> added, int threads)
        {
            for (var s = 0; s < sets.Length; s++)
            {
                var set = sets[s];
                added[s] = Enumerable.Range(0, Shelves).Sum(i => set[i].ToArray().Max(l => Strength(l))) >= Needed ? 0 : double.PositiveInfinity;
            }
        }

        public void Evaluate(ReadOnlySpan<LevelSets> points, Span<double> costs, int threads)
        {
            for (var i = 0; i < points.Length; i++)
            {
                var point = points[i].Lowest();
                costs[i] = point.Select(Strength).Sum() >= Needed ? point.Select(Price).Sum() : double.PositiveInfinity;
            }
        }

        public Branching Split(LevelSets set)
        {
            var at = Enumerable.Range(0, Shelves).First(i => !set.IsSingle(i));
            return new([.. set[at].ToArray().Select(l => set.With(at, [l], variables))], true);
        }

        private static double Price(double level) => 3 + (2 * level);

        private static double Price(int level) => Price((double)level);

        private static double Strength(double level) => (level * 7 % 10) + (level / 4);

        private static double Strength(int level) => Strength((double)level);
    }
}
