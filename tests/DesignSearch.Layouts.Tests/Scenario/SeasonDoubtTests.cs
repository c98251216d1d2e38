using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class SeasonDoubtTests
{
    private const string Start = "start = \"11-01\"";
    private const string End = "end = \"03-31\"";

    [Theory]
    [InlineData("11-01", "03-31")]
    [InlineData("01-10", "01-30")]
    [InlineData("09-01", "01-31")]
    [InlineData("01-01", "12-31")]
    public void A_season_with_the_coldest_month_in_it_is_not_doubted(string start, string end)
    {
        using var small = new SmallScenario((Start, $"start = \"{start}\""), (End, $"end = \"{end}\""));
        Assert.Empty(small.Read().Doubts);
    }

    [Theory]
    [InlineData("05-01", "09-30", "1 May to 30 September")]
    [InlineData("03-10", "03-31", "10 March to 31 March")]
    [InlineData("02-20", "11-30", "20 February to 30 November")]
    public void A_season_without_it_is_doubted_by_name(string start, string end, string told)
    {
        using var small = new SmallScenario((Start, $"start = \"{start}\""), (End, $"end = \"{end}\""));
        var doubt = Assert.Single(small.Read().Doubts);
        Assert.Contains(told, doubt, StringComparison.Ordinal);
        Assert.Contains("January, the coldest month here (-2.8 °C", doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_month_is_colder_any_season_will_do()
    {
        using var small = new SmallScenario(
            (Start, "start = \"05-01\""), (End, "end = \"09-30\""),
            ("mean_air_c = [-2.8, -1.2, 3.1, 7.6, 12.4, 15.9, 18.1, 17.5, 13.6, 8.6, 2.7, -1.7]", "mean_air_c = [13, 13, 13, 13, 13.4, 13, 13, 13, 13, 13, 13, 13]"));
        Assert.Empty(small.Read().Doubts);
    }

    // A month hardly warmer than the coldest does for it: a degree. February's middle is counted from the 10th on.
    [Theory]
    [InlineData("-1.9", 0)]
    [InlineData("-1.7", 1)]
    public void A_month_within_a_degree_of_the_coldest_does_for_it(string february, int doubts)
    {
        using var small = new SmallScenario((Start, "start = \"02-10\""), ("mean_air_c = [-2.8, -1.2,", $"mean_air_c = [-2.8, {february},"));
        Assert.Equal(doubts, small.Read().Doubts.Count());
    }
}
