using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Words;
using Xunit;

namespace DesignSearch.Reporting.Tests;

public sealed class FrontChartTests
{
    [Fact]
    public void Front_falls_with_cost_and_starts_at_the_bare_house()
    {
        var front = FrontChart.Of(InventedRun.Finished(), FrontReading.Frost).Front;
        Assert.Equal(0, front[0].Rank);
        Assert.All(front.Zip(front.Skip(1)), p => Assert.True(p.Second.LifeCost >= p.First.LifeCost && p.Second.FrostKh < p.First.FrostKh));
    }

    [Fact]
    public void Picks_are_named_and_a_layout_picked_twice_is_named_once()
    {
        var run = InventedRun.Finished();
        run = run with { Judgement = run.Judgement with { Picks = new(1, 1, 1, 2) } };
        var named = FrontChart.Of(run, FrontReading.Frost).Points.Where(p => p.PickName.Length > 0).OrderBy(p => p.Rank).Select(p => (p.Rank, p.PickName));
        Assert.Equal([(1, "Cheapest that holds and best value"), (2, "Most protection")], named);
    }

    [Fact]
    public void Dearer_layouts_that_would_squeeze_the_front_are_counted_not_drawn()
    {
        var run = InventedRun.Finished();
        var chart = FrontChart.Of(run, FrontReading.Frost);
        var left = run.Judgement.Ranking.Count + 1 - chart.Points.Count;
        Assert.True(left > 0);
        Assert.Contains($"{left} dearer layouts", chart.Note, StringComparison.Ordinal);
        Assert.All(run.Judgement.Front, r => Assert.Contains(chart.Points, p => p.Rank == r));
    }

    [Fact]
    public void A_bare_house_far_above_the_rest_stretches_the_scale_near_zero()
    {
        var run = InventedRun.Finished();
        Assert.False(FrontChart.Of(run, FrontReading.Frost).Up.Stretched);
        var bare = run.Judgement.BareHouse with { FrostDegreeHoursKh = 20 * InventedLayouts.BareDegreeHours };
        var chart = FrontChart.Of(run with { Judgement = run.Judgement with { BareHouse = bare } }, FrontReading.Frost);
        Assert.True(chart.Up.Stretched);
        Assert.Contains("stretched", chart.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void The_coldest_hour_is_read_off_the_same_points_with_limit_and_budget_as_lines()
    {
        var run = InventedRun.Finished();
        var chart = FrontChart.Of(run, FrontReading.ColdestHour);
        Assert.Equal((run.Scenario.FrostLimitC, "limit 2\u00A0°C"), chart.LevelLine);
        Assert.All(chart.Points.Where(p => p.Rank > 0), p => Assert.Equal(run.Judgement.Ranking[p.Rank - 1].Holds, p.Holds));
        var least = run.Judgement.Ranking.Where(l => l.Holds).Min(l => l.BuildPrice);
        Assert.Contains($"is kept from {Say.Money(least, "crowns")} to build on, of all that was found.", chart.Finding, StringComparison.Ordinal);
        Assert.All(chart.Points, p => Assert.InRange(chart.Up.Share(p.LowestAirC), 0, 1));
        Assert.InRange(chart.Up.Share(run.Scenario.FrostLimitC), 0, 1);
        // A budget far to the right of all that is drawn is no line.
        var dearest = chart.Points.Max(p => p.BuildPrice);
        Assert.Equal((Math.Floor(1.4 * dearest), "budget"), FrontChart.Of(run with { Scenario = run.Scenario with { Budget = (decimal)Math.Floor(1.4 * dearest) } }, FrontReading.ColdestHour).UprightLine);
        Assert.Null(FrontChart.Of(run with { Scenario = run.Scenario with { Budget = 1_000_000 } }, FrontReading.ColdestHour).UprightLine);
        Assert.Contains("the warmest that was found falls to", FrontChart.Of(InventedRun.NothingHolds(), FrontReading.ColdestHour).Finding, StringComparison.Ordinal);
    }

    [Fact]
    public void The_finding_says_from_what_cost_on_frost_is_gone()
    {
        var run = InventedRun.Finished();
        var cheapest = run.Judgement.Ranking[run.Judgement.Picks.CheapestThatHolds!.Value - 1];
        Assert.StartsWith($"Of all that was found, frost is gone from a life cost of {Say.Money(cheapest.LifeCost, "crowns")} on", FrontChart.Of(run, FrontReading.Frost).Finding, StringComparison.Ordinal);
    }

    [Fact]
    public void The_finding_says_what_is_left_where_nothing_ends_the_frost() =>
        Assert.StartsWith("The least frost to be had is ", FrontChart.Of(InventedRun.NothingHolds(), FrontReading.Frost).Finding, StringComparison.Ordinal);

    [Fact]
    public void A_run_without_a_single_ranked_layout_still_has_a_chart()
    {
        var run = InventedRun.Of([]);
        Assert.Equal("No layout gives less frost than the bare house.", FrontChart.Of(run, FrontReading.Frost).Finding);
        Assert.Single(FrontChart.Of(run, FrontReading.Frost).Points);
    }
}
