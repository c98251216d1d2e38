using DesignSearch.Climate.Synthesis;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Climate.Tests;

public sealed class ReturnLevelsTests
{
    [Theory]
    [InlineData(2, -0.16)]
    [InlineData(5, 0.72)]
    [InlineData(10, 1.30)]
    [InlineData(20, 1.87)]
    [InlineData(50, 2.59)]
    public void Factors_are_those_of_the_Gumbel_tables(double years, double factor) =>
        Validation.Equal($"winter Gumbel {years}", "standard deviations below the mean yearly minimum", factor, ReturnLevels.Factor(years), 0.006, "Gumbel frequency factors, as in any hydrology table (Chow 1951)", "ReturnLevels.Factor");

    [Fact]
    public void A_level_and_the_mean_it_came_from_agree() => Assert.Equal(-12, ReturnLevels.Level(ReturnLevels.MeanOfYearly(-12, 10, 3), 3, 10), 1e-9);
}
