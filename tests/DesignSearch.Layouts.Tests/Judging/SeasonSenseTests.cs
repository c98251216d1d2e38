using DesignSearch.Climate.Plane;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Solar;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>The chain from scenario to season behaves as a builder would expect.</summary>
public sealed class SeasonSenseTests : IDisposable
{
    private readonly SmallScenario small = new();
    private readonly Scenario scenario;
    private readonly LayoutAssessor assessor;
    private readonly Judge judge;

    public SeasonSenseTests()
    {
        scenario = small.Read();
        assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        judge = new Judge(assessor);
    }

    public void Dispose() => small.Dispose();

    [Fact]
    public void A_night_cover_and_then_a_heater_each_take_frost_away()
    {
        var bare = judge.Of(SmallScenario.Of(scenario));
        var covered = judge.Of(SmallScenario.Of(scenario, ("night_cover", "aluminised-hand")));
        var heated = judge.Of(SmallScenario.Of(scenario, ("night_cover", "aluminised-hand"), ("heater", "fan-heater-2kw"), ("heater_set_c", 4)));
        Assert.True(bare.FrostDegreeHoursKh > covered.FrostDegreeHoursKh && covered.FrostDegreeHoursKh > heated.FrostDegreeHoursKh);
        Assert.True(bare.LowestAirC < covered.LowestAirC && covered.LowestAirC < heated.LowestAirC);
    }

    [Fact]
    public void Stand_by_of_the_bare_house_stays_under_its_loss_times_the_cold_outside()
    {
        var heated = SmallScenario.Of(scenario, ("heater", "fan-heater-3kw"), ("heater_set_c", 4));
        var built = LayoutBuilder.Build(scenario, heated);
        var outcomes = assessor.Simulate([built])[0];
        for (var w = 0; w < outcomes.Length; w++)
        {
            var winter = assessor.Winters.Winters[w].Winter;
            var degreeHours = winter.AirC.Skip(winter.WarmUpHours).Sum(c => Math.Max(0, 4 - c));
            var bound = HouseLoss.CoefficientWPerK(built.Installation.House, winter.WindMPerS.Skip(winter.WarmUpHours).Average()) * degreeHours / 1000;
            Assert.InRange(outcomes[w].StandbyKwh, 0.2 * bound, 1.1 * bound);
        }
    }

    [Theory]
    [InlineData(46.3)]
    [InlineData(-46.3)]
    public void East_and_west_swapped_lose_yield_in_both_hemispheres(double latitude)
    {
        using var site = new SmallScenario(
            ("latitude_deg = 46.3", FormattableString.Invariant($"latitude_deg = {latitude}")),
            latitude > 0 ? ("tilt_deg = 60", "tilt_deg = 60") : ("start = \"11-01\"\nend = \"03-31\"", "start = \"05-01\"\nend = \"09-30\""));
        var place = site.Read();
        var winters = WinterSet.Make(place);
        var (winter, _, forcing) = winters.Winters[0];
        var built = LayoutBuilder.Build(place, SmallScenario.Solar(place, ("mount", "two-position-rocker"), ("drive", "slew-200nm"), ("limit_deg", 30), ("switch_hours", 5.5), ("azimuth_deg", latitude > 0 ? 180 : 0)));
        // A tank too large to fill, so that what the sun brings is what counts.
        var roomy = built.Installation with { Tank = built.Installation.Tank with { WaterKg = 20_000, LossWPerK = 60 } };
        double Yield(double limit) => SeasonSimulator.Run(forcing, new LayoutCase(roomy, winters.Planes.Get(winter, built.Mount! with { LimitAngleDeg = limit }))).CollectorYieldKwh;
        Assert.True(Yield(30) > 1.02 * Yield(-30), FormattableString.Invariant($"{Yield(30)} against {Yield(-30)} swapped"));
        Assert.Equal(MountKind.TwoPosition, built.Mount!.Kind);
    }

    [Fact]
    public void Twice_the_collector_gives_more_but_less_than_twice_and_none_gives_nothing()
    {
        var (winter, _, forcing) = assessor.Winters.Winters[0];
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario));
        var plane = assessor.Plane(built, winter);
        Outcome Run(double area) => SeasonSimulator.Run(forcing, new LayoutCase(built.Installation with { PipeRun = PipeRunNumbers.None, Collector = built.Installation.Collector with { AreaM2 = area, FlowKgPerS = 0.015 * area } }, plane));
        var (single, twice) = (Run(2).CollectorYieldKwh, Run(4).CollectorYieldKwh);
        Assert.InRange(twice, single * 1.0001, single * 1.9999);
        var without = SeasonSimulator.Run(forcing, new LayoutCase(built.Installation with { PipeRun = PipeRunNumbers.None, Collector = CollectorNumbers.None }, null));
        Assert.Equal(without, Run(0));
    }

    [Fact]
    public void The_ranking_keeps_its_order_and_its_picks()
    {
        JudgedLayout Make(string slug, decimal cost, double frost, int worst, double score, bool passes = true) =>
            judge.Of(SmallScenario.Of(scenario)) with { Slug = slug, LifeCost = cost, FrostDegreeHoursKh = frost, WorstFrostHours = worst, Score = score, PassesChecks = passes, Holds = passes && worst == 0 };
        var ranked = PickChooser.Rank([Make("cheap", 10, 50, 9, 3), Make("holds-dear", 90, 0, 0, 1), Make("holds", 60, 0, 0, 1.5), Make("fails", 5, 0, 0, 9, passes: false)], 10, _ => false).Select(r => r.Layout with { Rank = r.Rank }).ToList();
        Assert.Equal(["holds", "holds-dear", "cheap"], ranked.Select(l => l.Slug));
        Assert.Equal(new Picks(1, 1, 3, 1), PickChooser.Choose(ranked, null));
        // Where it was asked how sure they are, that picks the first and the last.
        Assert.Equal(new Picks(2, 1, 3, 2), PickChooser.Choose(ranked, (2, 2)));
    }
}
