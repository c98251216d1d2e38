using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Design;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What is in doubt about random layouts, and the ranges that it is drawn from.</summary>
public sealed class DoubtfulFigureTests
{
    private const int Layouts = 1000;

    // A triangle from 0 to 4 with its tip at 1 has its mean at 5/3, its median where the right-hand side leaves a half, and a quarter of its area left of the tip.
    [Fact]
    public void A_figure_is_drawn_from_a_triangle_with_its_tip_at_the_usual_one()
    {
        var figure = new DoubtfulFigure("figure", 1, 0, 4, "", f => $"it is {f}");
        const int n = 4000;
        Assert.Equal(5.0 / 3, Enumerable.Range(0, n).Average(i => figure.At((i + 0.5) / n)), 1e-3);
        Assert.Equal(1, figure.At(0.25), 1e-9);
        Assert.Equal(4 - Math.Sqrt(6), figure.At(0.5), 1e-9);
        Assert.Equal("it is 4; it is 0", figure.Range);
        // A range with the usual figure at its end has one end to meet.
        Assert.Equal([0.8], new DoubtfulFigure("figure", 1, 0.8, 1, "", f => $"{f}").Ends);
        Assert.Equal(0.8 + 0.2 * Math.Sqrt(0.5), new DoubtfulFigure("figure", 1, 0.8, 1, "", f => $"{f}").At(0.5), 1e-9);
    }

    // The draws put several doubts on top of each other, so none may undo another, and none may do anything at the usual figure.
    [Fact]
    public void Doubts_of_a_layout_stand_beside_each_other()
    {
        using var small = ProofScenario.Everything();
        var assessor = CheapestHonestyTests.Assessor(small);
        var problem = new LayoutProblem(assessor);
        var random = new Random(31);
        var (seen, both) = (new HashSet<string>(StringComparer.Ordinal), 0);
        for (var i = 0; i < Layouts; i++)
        {
            var point = problem.Variables.Select(v => (double)random.Next(v.Levels)).ToArray();
            var built = assessor.Price(problem.Space.At(point)).Built;
            PlantDoubt[] doubts = [.. Unknowns.Of(built)];
            Assert.Equal(doubts.Length, doubts.Select(d => d.Figure.Name).Distinct().Count());
            seen.UnionWith(doubts.Select(d => d.Figure.Name));
            var plant = built.Installation;
            foreach (var doubt in doubts)
            {
                Assert.InRange(doubt.Figure.Usual, doubt.Figure.Low, doubt.Figure.High);
                Assert.NotEmpty(doubt.Figure.Ends);
                Assert.NotEqual("", doubt.Figure.Why);
                Assert.Equal(plant, doubt.Change(plant, doubt.Figure.Usual));
                foreach (var end in doubt.Figure.Ends)
                    Assert.NotEqual(plant, doubt.Change(plant, end));
            }

            foreach (var (one, other) in from a in doubts from b in doubts where a != b select (a, b))
            {
                var (x, y) = (one.Figure.Ends.First(), other.Figure.Ends.First());
                Assert.Equal(one.Change(other.Change(plant, y), x), other.Change(one.Change(plant, x), y));
                both++;
            }
        }

        Assert.True(seen.Count >= 9, string.Join(", ", seen));
        Assert.True(both > 10 * Layouts);
    }
}
