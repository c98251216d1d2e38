using DesignSearch.Search.Space;
using Xunit;

namespace DesignSearch.Search.Tests;

public class SearchSpaceTests
{
    private static readonly Variable[] Sleepy =
    [
        new() { Name = "a", Kind = VariableKind.Category, Levels = 3 },
        new() { Name = "b", Kind = VariableKind.Ordered, Levels = 4, AwakeWhen = p => p[0] == 1 },
        new() { Name = "c", Kind = VariableKind.Ordered, Levels = 5 },
        new() { Name = "d", Kind = VariableKind.Category, Levels = 2, AwakeWhen = p => p[1] >= 2 || p[2] == 4 },
    ];

    [Fact]
    public void Sleepers_hold_their_first_level()
    {
        double[] point = [0, 3, 2, 1];
        new SearchSpace(Sleepy).Canonicalise(point);
        Assert.Equal([0, 0, 2, 0], point);
    }

    [Fact]
    public void Values_are_brought_into_range()
    {
        double[] point = [1.4, -3, 9, double.NaN];
        new SearchSpace(Sleepy).Canonicalise(point);
        Assert.Equal([1, 0, 4, 0], point);
    }

    [Fact]
    public void Size_equals_the_number_of_points_walked_and_all_differ()
    {
        var space = new SearchSpace(Sleepy);
        var points = space.Points().ToArray();
        var brute = (from a in Enumerable.Range(0, 3) from b in Enumerable.Range(0, 4) from c in Enumerable.Range(0, 5) from d in Enumerable.Range(0, 2) select new double[] { a, b, c, d }).ToArray();
        foreach (var point in brute)
            space.Canonicalise(point);
        var distinct = brute.Select(p => string.Join(' ', p)).ToHashSet();
        Assert.Equal(distinct.Count, (int)space.Size!.Value);
        Assert.Equal(distinct, points.Select(p => string.Join(' ', p)).ToHashSet());
        Assert.Equal(points.Length, points.Select(p => SearchSpace.KeyOf(p)).ToHashSet().Count);
    }

    [Fact]
    public void Every_fault_of_the_variables_is_named()
    {
        var fault = Assert.Throws<ArgumentException>(() => new SearchSpace(
        [
            new() { Name = "a", Kind = VariableKind.Category, Levels = 0 },
            new() { Name = "a", Kind = VariableKind.Real, Low = 2, High = 1 },
        ]));
        Assert.Contains("0 levels", fault.Message, StringComparison.Ordinal);
        Assert.Contains("2 to 1", fault.Message, StringComparison.Ordinal);
        Assert.Contains("stands for 2", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NegativeInfinity, 1)]
    [InlineData(0, double.PositiveInfinity)]
    [InlineData(0, double.NaN)]
    [InlineData(1, 1)]
    public void Bounds_of_a_real_are_finite_and_apart(double low, double high) =>
        Assert.Contains("expected two finite bounds", Assert.Throws<ArgumentException>(() => new SearchSpace(FormulaProblem.Reals((low, high)))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_space_needs_a_variable_and_a_variable_a_level()
    {
        Assert.Contains("at least one variable", Assert.Throws<ArgumentException>(() => new SearchSpace([])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => new SearchSpace(null!));
        Assert.Equal(1, new SearchSpace(FormulaProblem.Whole(1)).Size!.Value);
        Assert.Throws<ArgumentNullException>(() => new SearchSpace(Sleepy).Canonicalise(null!));
    }

    [Fact]
    public void A_real_is_held_between_its_bounds_and_cannot_be_enumerated()
    {
        var space = new SearchSpace([.. FormulaProblem.Reals((-2, 3), (-2, 3), (-2, 3), (-2, 3)), new() { Name = "asleep", Kind = VariableKind.Real, Low = 4, High = 6, AwakeWhen = _ => false }]);
        double[] point = [-5, 7, 0.25, double.NaN, 5];
        space.Canonicalise(point);
        Assert.Equal([-2, 3, 0.25, -2, 4], point);
        Assert.Null(space.Size);
        Assert.False(space.HoldsAtMost(long.MaxValue));
        Assert.Throws<InvalidOperationException>(() => space.Points());
    }

    [Fact]
    public void Keys_of_a_hundred_thousand_neighbours_differ_and_minus_nothing_is_nothing()
    {
        var keys = from a in Enumerable.Range(0, 50) from b in Enumerable.Range(0, 50) from c in Enumerable.Range(0, 40) select SearchSpace.KeyOf([a, b / 64.0, c]);
        Assert.Equal(100_000, keys.Distinct().Count());
        Assert.Equal(SearchSpace.KeyOf([0.0]), SearchSpace.KeyOf([-0.0]));
    }

    [Fact]
    public void A_condition_may_look_at_all_that_went_before()
    {
        // Of nine pairs, six add up to 2 or more and wake the third variable: 3 + 6 · 4.
        var space = new SearchSpace([.. FormulaProblem.Whole(3, 3), new() { Name = "c", Kind = VariableKind.Ordered, Levels = 4, AwakeWhen = p => p.Take(2).Sum() >= 2 }]);
        Assert.Equal(27, space.Size!.Value);
        Assert.Equal(27, space.Points().Select(p => SearchSpace.KeyOf(p)).Distinct().Count());
    }

    [Fact]
    public void A_space_holds_at_most_what_it_holds()
    {
        // Each variable after the second is awake by the sum of any earlier ones, so that the count branches on all of them.
        var random = new Random(5);
        for (var draw = 0; draw < 100; draw++)
        {
            var variables = new List<Variable>(FormulaProblem.Whole(random.Next(1, 4), random.Next(1, 4)));
            for (var i = 2; i < 6; i++)
            {
                var (seen, least) = (random.Next(1, i + 1), random.Next(0, 4));
                variables.Add(new() { Name = $"v{i}", Kind = VariableKind.Ordered, Levels = random.Next(1, 4), AwakeWhen = p => p.Take(seen).Sum() >= least });
            }

            var space = new SearchSpace(variables);
            var size = (long)space.Size!.Value;
            for (var limit = 0; limit <= size + 3; limit++)
                Assert.Equal(size <= limit, space.HoldsAtMost(limit));
        }
    }
}
