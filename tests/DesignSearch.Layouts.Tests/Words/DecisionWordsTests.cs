using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Weigh;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>What is said of a decision, singular and plural.</summary>
public sealed class DecisionWordsTests(ShortSample shorter) : IClassFixture<ShortSample>
{
    private readonly WeighedSample sample = shorter.Weighed;

    [Theory]
    [InlineData(1, "which still has 1 frost hour in the worst winter.")]
    [InlineData(2, "which still has 2 frost hours in the worst winter.")]
    public void The_nearest_miss_has_its_hours(int hours, string expected)
    {
        var (bare, nearest) = (sample.Judgement.BareHouse with { Holds = false }, sample.Judgement.Ranking[0] with { WorstFrostHours = hours });
        var answer = AnswerWords.Answer(sample.Scenario, bare, [nearest], new Picks(null, null, null, 1), isExact: true);
        Assert.Contains(expected, answer, StringComparison.Ordinal);
        Assert.StartsWith("Nothing within", answer, StringComparison.Ordinal);
        Assert.StartsWith("Nothing was found within", AnswerWords.Answer(sample.Scenario, bare, [nearest], new Picks(null, null, null, 1), isExact: false), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "°C for 1 hour, at worst by")]
    [InlineData(2, "°C for 2 hours, at worst by")]
    public void It_lies_below_the_limit_for_its_hours(int hours, string expected)
    {
        var found = sample.Judgement.Ranking[0];
        var winters = found.Winters.Select(w => w with { Outcome = w.Outcome with { FrostHours = hours } }).ToList();
        var said = AnswerWords.NearestMiss(sample.Scenario, [found with { Winters = winters }], new Picks(null, null, null, 1));
        Assert.Contains(expected, said[0], StringComparison.Ordinal);
    }

    [Fact]
    public void One_year_is_one_year()
    {
        var scenario = sample.Scenario with { Money = sample.Scenario.Money with { Years = 1 } };
        var bare = sample.Judgement.BareHouse with { Holds = false };
        var answer = AnswerWords.Answer(scenario, bare, sample.Judgement.Ranking, new Picks(1, 1, 1, 1), isExact: true);
        Assert.Contains("lowest whole-life cost, build", answer, StringComparison.Ordinal);
        Assert.Contains("lowest whole-life cost found, build", AnswerWords.Answer(scenario, bare, sample.Judgement.Ranking, new Picks(1, 1, 1, 1), isExact: false), StringComparison.Ordinal);
        Assert.Contains(" over 1 year.", answer, StringComparison.Ordinal);
    }

    [Fact]
    public void A_doubt_has_its_hours_and_its_share()
    {
        Assert.Equal("It no longer holds: 1 frost hour in the worst winter, 0.0 K below the limit.", DoubtWords.HoldsNoLonger(1, -0.04));
        Assert.Equal("It has 3 instead of 1 frost hour in the worst winter.", DoubtWords.MissesAnyway(3, 1));
        Assert.Equal("the cover loses a fifth more", DoubtWords.CoverLoses(1.2));
        Assert.Equal("the cover loses a fifth less", DoubtWords.CoverLoses(0.8));
        Assert.Equal("the cover loses 25 % less", DoubtWords.CoverLoses(0.75));
        Assert.Equal("twice the air leaks", DoubtWords.AirLeaks(2));
        Assert.Equal("parts cost 30 % more", DoubtWords.PartsCost(1.3m));
        Assert.Equal("current costs 30 % less", DoubtWords.CurrentCosts(0.7m));
    }

    [Fact]
    public void One_winter_is_one_winter() =>
        Assert.StartsWith("It held in 1 of 1 winter it was not chosen on: in the long run at most 80 winters in 100 would go below the limit", UnseenWords.Held(1, 1, 0.2, 1), StringComparison.Ordinal);
}
