using CsCheck;
using DesignSearch.Search.Indicators;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Search.Tests;

public class HypervolumeTests
{
    [Fact]
    public void Zdt_fronts_have_their_analytic_area()
    {
        var steps = Enumerable.Range(0, 200_001).Select(i => i / 200_000.0).ToArray();
        Validation.Equal("search area ZDT1", "area up to (1.1, 1.1)", 0.1 + (2.0 / 3) + 0.11, Hypervolume.Of(steps.Select(x => new[] { x, 1 - Math.Sqrt(x) }), [1.1, 1.1]), 1e-5, "analytic", "Hypervolume.Of");
        Validation.Equal("search area ZDT2", "area up to (1.1, 1.1)", 0.1 + (1.0 / 3) + 0.11, Hypervolume.Of(steps.Select(x => new[] { x, 1 - (x * x) }), [1.1, 1.1]), 1e-5, "analytic", "Hypervolume.Of");
    }

    [Fact]
    public void Two_boxes_in_three_dimensions() =>
        Assert.Equal((1 * 2 * 3) + (2 * 1 * 1) - (1 * 1 * 1), Hypervolume.Of([[2, 1, 0], [1, 2, 2]], [3, 3, 3]), 12);

    [Fact]
    public void Agrees_with_counting_of_cells() =>
        Gen.Int[0, 5].Array[3].Array[0, 8].Sample(cells =>
        {
            var points = cells.Select(c => c.Select(v => (double)v).ToArray()).ToArray();
            var count = (from x in Enumerable.Range(0, 5)
                         from y in Enumerable.Range(0, 5)
                         from z in Enumerable.Range(0, 5)
                         where points.Any(p => p[0] <= x && p[1] <= y && p[2] <= z)
                         select 1).Count();
            Assert.Equal(count, Hypervolume.Of(points, [5, 5, 5]), 9);
            var flat = points.Select(p => p[..2]).ToArray();
            var area = (from x in Enumerable.Range(0, 5) from y in Enumerable.Range(0, 5) where flat.Any(p => p[0] <= x && p[1] <= y) select 1).Count();
            Assert.Equal(area, Hypervolume.Of(flat, [5, 5]), 9);
        });

    [Fact]
    public void One_objective_is_a_length_and_a_point_on_the_reference_adds_nothing()
    {
        Assert.Equal(3, Hypervolume.Of([[4], [2], [5]], [5]));
        Assert.Equal(0, Hypervolume.Of([[5, 1], [1, 5]], [5, 5]));
        Assert.Equal(0, Hypervolume.Of([], [5, 5]));
        Assert.Throws<ArgumentNullException>(() => Hypervolume.Of(null!, [1]));
        Assert.Throws<ArgumentNullException>(() => Hypervolume.Of([[1]], null!));
    }
}
