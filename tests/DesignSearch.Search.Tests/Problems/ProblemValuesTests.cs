using DesignSearch.Search.Space;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Search.Tests;

/// <summary>The test problems give the figures of their definitions.</summary>
public class ProblemValuesTests
{
    private const string Own = "own definition of the catalogue problem, a second version written independently in another language";

    [Theory]
    [InlineData(1, "0 0 0 0 0 0 0 0 0 0 0 0", 564.02, 117, 0)]
    [InlineData(2, "7 11 8 6 2 5 3 4 2 3 3 2", 5040.56146875, 15, 1.35018715625)]
    [InlineData(3, "3 4 4 2 0 2 1 2 1 1 1 1", 2658.707, 60, 0.021969696970)]
    [InlineData(4, "2 7 5 1 0 4 0 1 2 2 2 0", 2970.2184, 24, 0)]
    [InlineData(5, "1 5 3 6 0 0 3 4 0 2 0 2", 2200.66, 70, 0.031363636364)]
    [InlineData(6, "5 5 4 5 1 3 2 3 0 0 3 0", 2335.2993, 0, 0)]
    public void Catalogue_designs(int row, string design, double cost, double unmet, double violation)
    {
        var point = design.Split(' ').Select(double.Parse).ToArray();
        var problem = new CatalogueProblem();
        Validation.Equal($"search catalogue {row} cost", "cost", cost, problem.Cost(point), 1e-8, Own, "reference");
        Validation.Equal($"search catalogue {row} unmet", "unmet steps", unmet, problem.Unmet(point), 0, Own, "reference");
        Validation.Equal($"search catalogue {row} violation", "violation", violation, problem.Violation(point, problem.Cost(point)), 1e-11, Own, "reference");
    }

    [Fact]
    public void Catalogue_tables()
    {
        var problem = new CatalogueProblem();
        Assert.Equal(16.68, problem.SunSum, 10);
        Assert.Equal(21960, problem.NeedSum);
        Assert.Equal([101, 127, 138, 128, 86, 134, 84, 105], problem.Gains);
        Assert.Equal([100, 85, 64, 54], problem.Losses);
        Assert.Equal(274_337_280, new SearchSpace(problem.Variables).Size);
    }

    [Theory]
    [InlineData(1, 0.5, 3.84168760482)]
    [InlineData(2, 0.5, 5.45454545455)]
    [InlineData(3, 0.5, 3.84168760482)]
    [InlineData(4, 0.5, 1.9752451216)]
    [InlineData(6, 1, 8.45135530799)]
    public void Zdt_at_one_half(int number, double f1, double f2)
    {
        var problem = Continuous.Zdt(number);
        var at = problem.At([.. Enumerable.Repeat(0.5, problem.Variables.Count)]).Objectives;
        Assert.Equal(f1, at[0], 10);
        Validation.Equal($"search ZDT{number} at 0.5", "f2", f2, at[1], 1e-10, "Zitzler, Deb and Thiele 2000, formula", "reference");
    }

    [Theory]
    [InlineData(21, "2 2 2 2", 2048.52813742, 0.02)]
    [InlineData(22, "7.5 10 20", 331.68, 76.09824)]
    [InlineData(23, "13 7 42 180", 6121.65740156, 0)]
    [InlineData(24, "1.7 3", 361.7, 0.593837535014)]
    [InlineData(25, "10 1.5 0.3", 4.18590155339, 0.600165003674)]
    public void Re_values(int number, string point, double f1, double f2)
    {
        var at = Engineering.Re(number).At([.. point.Split(' ').Select(double.Parse)]).Objectives;
        Validation.Equal($"search RE{number} f1", "f1", f1, at[0], 1e-8, "Tanabe and Ishibuchi 2020, formula", "reference");
        Validation.Equal($"search RE{number} f2", "f2", f2, at[1], 1e-10, "Tanabe and Ishibuchi 2020, formula", "reference");
    }

    [Fact]
    public void Gear_value()
    {
        var at = Engineering.Gear().At(16 - 12, 19 - 12, 43 - 12, 49 - 12).Objectives;
        Validation.Equal("search gear 16 19 43 49", "ratio error", 1.64342847392e-6, at[0], 1e-16, "Sandgren 1990, formula", "reference");
        Assert.Equal(49, at[1]);
    }
}
