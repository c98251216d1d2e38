using DesignSearch.Climate.Winters;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Season.House;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>A cover that somebody has to draw is forgotten now and then, and how sure a layout is says so.</summary>
public sealed class ForgettingTests
{
    private const int Draws = 24;

    [Fact]
    public void Nights_are_whole_and_as_many_are_forgotten_as_was_drawn()
    {
        using var small = new SmallScenario();
        var winter = DesignWinters.Drawn(small.Read(), 1, 5)[0];
        var nights = Forgetting.Nights(winter).ToList();
        // November to March, and thirty days to settle before.
        Assert.InRange(nights.Count, 180, 183);
        // The first and the last are cut by the winter's ends.
        Assert.All(nights.Skip(1).SkipLast(1), n => Assert.InRange(n.Count, 10, 19));
        Assert.All(nights.Zip(nights.Skip(1)), pair => Assert.True(pair.First.First + pair.First.Count <= pair.Second.First));
        Assert.Equal(nights, Forgetting.In(winter, 1, 1).CoverLeftOpen);
        Assert.Empty(Forgetting.In(winter, 0, 1).CoverLeftOpen);
        Assert.Equal(Forgetting.In(winter, 0.03, 8).CoverLeftOpen, Forgetting.In(winter, 0.03, 8).CoverLeftOpen);
        // Six standard errors of a count of 400 · 182 draws at 3 %: 276 of 2184.
        Assert.InRange(Enumerable.Range(0, 400).Sum(seed => Forgetting.In(winter, 0.03, seed).CoverLeftOpen.Count), 1908, 2460);
    }

    [Fact]
    public void Nights_of_weeks_are_days_and_where_the_sun_stays_up_there_is_none()
    {
        using var small = new SmallScenario();
        var winter = DesignWinters.Drawn(small.Read(), 1, 5)[0];
        var dark = Forgetting.Nights(winter with { SunZenithDeg = [.. winter.SunZenithDeg.Select(_ => 100.0)] }).ToList();
        Assert.Equal(winter.Hours, dark.Sum(n => n.Count));
        Assert.All(dark, n => Assert.InRange(n.Count, 1, 24));
        Assert.Empty(Forgetting.Nights(winter with { SunZenithDeg = [.. winter.SunZenithDeg.Select(_ => 80.0)] }));
    }

    [Fact]
    public void A_cover_drawn_by_hand_is_never_surer_than_one_that_draws_itself_at_the_same_moment()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        // Under so bright a sky the light sensor closes as the sun sets, as a hand does.
        List<Winter> winters = [.. DesignWinters.Drawn(scenario, Draws, 5).Select(w => w with { GlobalWPerM2 = [.. w.GlobalWPerM2.Select(_ => 1000.0)] })];
        var draws = new DoubtDraws(scenario, winters, 5, 2);
        var bare = LayoutBuilder.Build(scenario, Layout.Bare(scenario.Systems.Choices));
        BuiltLayout Covered(bool bySensor) => bare with
        {
            Installation = bare.Installation with { House = bare.Installation.House with { NightCoverResistanceM2KPerW = 0.28, NightCoverDrawnBy = bySensor ? CoverDrawing.Sensor : CoverDrawing.Hand } },
        };
        var (hand, motor) = (Covered(false), Covered(true));
        Assert.Equal((true, false, false), (Forgetting.Matters(hand), Forgetting.Matters(motor), Forgetting.Matters(bare)));
        var (byHand, byMotor, uncovered) = (draws.All(hand, 2), draws.All(motor, 2), draws.All(bare, 2));
        var worse = 0;
        for (var i = 0; i < Draws; i++)
        {
            Assert.InRange(byHand[i].FrostDegreeHoursKh, byMotor[i].FrostDegreeHoursKh - 1e-9, uncovered[i].FrostDegreeHoursKh);
            worse += byHand[i].FrostDegreeHoursKh > byMotor[i].FrostDegreeHoursKh ? 1 : 0;
            // One by one or together, in any order.
            Assert.Equal([uncovered[i], byHand[i], byMotor[i]], draws.Of(i, [bare, hand, motor]));
        }

        // A share of 1 % in the mean over some 151 nights: hardly a winter without one.
        Assert.InRange(worse, Draws / 2, Draws);
    }
}
