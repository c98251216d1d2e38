using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Checks;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Money;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Solar;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class CheckListTests
{
    private static readonly (string, string) Near = ("mains_cable_m = 85", "mains_cable_m = 20");

    [Theory]
    [InlineData("budget", "budget = 4200", "budget = 100")]
    [InlineData("collector-space", "collector_space_m2 = 5 ", "collector_space_m2 = 3 ")]
    [InlineData("store-floor", "store_floor_m2 = 3.0", "store_floor_m2 = 0.5")]
    [InlineData("mount-wind", "design_wind_m_per_s = 30", "design_wind_m_per_s = 50")]
    [InlineData("floor-load", "mains_at_greenhouse = false", "mains_at_greenhouse = false\nfloor_bears_kg_per_m2 = 800")]
    [InlineData("anchorage", "mains_at_greenhouse = false", "mains_at_greenhouse = false\nanchor_holds_n = 300")]
    [InlineData("drain-fall", "collector_above_tank_m = 1.2", "collector_above_tank_m = 0.1")]
    public void A_limit_of_the_site_is_held(string check, string from, string to)
    {
        Assert.True(Failing(Near).Contains(check) == false);
        Assert.Contains(check, Failing(new[] { Near, (from, to) }));
    }

    [Theory]
    [InlineData("collector-freezing", "freeze_protection", "antifreeze-coil")]
    [InlineData("hot-start", "pipe", "ldpe-25")]
    [InlineData("insulation-fit", "pipe", "pex-16")]
    [InlineData("pump-lift", "pump", "solar-pump-5w")]
    [InlineData("freezing-power-cut", "freeze_protection", "drain-valves-mains")]
    public void A_part_that_does_not_serve_is_refused(string check, string key, string part)
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, (key, part)));
        var lift = check == "pump-lift" ? scenario with { Site = scenario.Site with { CollectorAboveTankM = 3 } } : scenario;
        built = LayoutBuilder.Build(lift, built.Layout);
        var checks = Checked.Of(lift, built, 0, 0, -18, []);
        Assert.Contains(checks, c => c.Id == check && !c.Passed && c.Margin < 0 && c.Sentence.Length > 20 && c.Source.Length > 5);
    }

    [Fact]
    public void A_frame_that_may_not_turn_in_the_wind_here_and_a_tank_taller_than_the_house_are_refused()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        List<string> Failing(double windMPerS, double ridgeM)
        {
            var (site, house) = (scenario.Site with { WorkingWindMPerS = windMPerS }, scenario.Greenhouse with { RidgeM = ridgeM });
            var here = scenario with { Site = site, Greenhouse = house };
            var layout = SmallScenario.Solar(here, ("mount", "two-position-rocker"), ("drive", "slew-200nm"), ("limit_deg", 30), ("switch_hours", 5.5));
            return [.. Checked.Of(here, LayoutBuilder.Build(here, layout), 0, 0, -10, []).Where(c => !c.Passed).Select(c => c.Id)];
        }

        Assert.DoesNotContain(Failing(13.9, 2.6), id => id is "mount-working-wind" or "tank-headroom");
        Assert.Contains("mount-working-wind", Failing(14.1, 2.6));
        Assert.Contains("tank-headroom", Failing(13.9, 1.15));
    }

    // A band of 2 K swings 1 K to either side; the limit is 2 °C.
    [Theory]
    [InlineData(4, 0.5)]
    [InlineData(3, 0.0)]
    [InlineData(2.9, -0.05)]
    [InlineData(2, -0.5)]
    [InlineData(1.9, null)]
    public void A_heater_that_would_swing_below_the_limit_does_not_hold_it(double setC, double? margin)
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var check = Checked.Of(scenario, LayoutBuilder.Build(scenario, SmallScenario.Of(scenario, ("heater", "fan-heater-1kw"), ("heater_set_c", setC))), 0, 0, -10, []).SingleOrDefault(c => c.Id == "heater-band");
        Assert.Equal(margin is null, check is null);
        if (check is null || margin is not { } expected)
            return;
        Assert.Equal(expected, check.Margin, 1e-9);
        Assert.Equal(expected >= 0, check.Passed);
    }

    [Theory]
    [InlineData("heater", "heater_set_c", 22, false)]
    [InlineData("heater", "heater_set_c", 23, true)]
    [InlineData("", "release_set_c", 23, true)]
    public void Heating_that_the_vents_would_throw_out_is_refused(string heater, string key, double setC, bool isRefused)
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var layout = SmallScenario.Solar(scenario, heater.Length > 0 ? [(heater, "fan-heater-1kw"), (key, setC)] : [(key, setC)]);
        var checks = new LayoutAssessor(scenario, WinterSet.Make(scenario)) is var assessor ? assessor.Checks(assessor.Price(layout), []) : [];
        Assert.Equal(isRefused, checks.Any(c => c.Id == "vents-apart" && !c.Passed));
    }

    [Fact]
    public void A_turning_frame_needs_a_drive_that_is_strong_enough()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        Check Torque(string drive) => Checked.Of(scenario, LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, ("mount", "two-position-rocker"), ("drive", drive), ("limit_deg", 30), ("switch_hours", 5.5))), 0, 0, -10, []).Single(c => c.Id == "drive-torque");
        Assert.False(Torque("slew-200nm").Passed);
        Assert.True(Torque("slew-600nm").Passed);
        // By hand: wind 0.5·1.25·10² = 62.5 Pa on 4 m² at 1.8: 450 N, a quarter of 2 m off the axis: 225 N·m; imbalance (72 + 36) kg·9.80665·0.05 m =
        // 52.96 N·m; starting friction 2·0.1·1059.1 N·0.04 m/2 = 4.24 N·m; with half as much again in hand: 423.3 N·m of 600.
        Assert.Equal(1 - 423.3 / 600, Torque("slew-600nm").Margin, 0.002);
    }

    [Fact]
    public void Weight_and_uplift_are_those_on_paper()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var checks = Checked.Of(scenario, LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario)), 0, 0, -10, []);
        // 1000 L and 58 kg on 1.2 m²: 881.7 kg/m² of 1500.
        Assert.Equal(1 - 881.67 / 1500, checks.Single(c => c.Id == "floor-load").Margin, 0.001);
        // 30 m/s: 562.5 Pa on 4 m² at 1.8: 4050 N at 60°, 1.25 m up the slope of 2 m: 1.5825 m high, 0.725 m behind the front feet; 4050 · (0.866 · 1.5825 + 0.5 · 0.725)
        // = 7018 N·m, one and a half times; 120 kg right 0.9 · 1176.8 · 0.6 = 635 N·m; the rest over 1.2 m on four of the eight screws: 2061 N of 3500.
        Assert.Equal(1 - 2061 / 3500.0, checks.Single(c => c.Id == "anchorage").Margin, 0.001);
    }

    [Theory]
    [InlineData("creeping", "turning-time")]
    public void A_drive_that_creeps_is_refused(string drive, string check)
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var slow = scenario.Catalogue.Of<Drive>().First(d => d.Id == "slew-200nm") is var slew ? slew with { Info = slew.Info with { Id = "creeping" }, SpeedDegPerS = 0.05 } : null!;
        scenario = scenario with { Catalogue = Catalogue.Of([.. scenario.Catalogue.All, slow]) };
        List<string> Failing(string id) => [.. Checked.Of(scenario, LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, ("mount", "two-position-rocker"), ("drive", id), ("limit_deg", 30), ("switch_hours", 5.5), ("shaft_seal", "cheapest"))), 0, 0, -10, []).Where(c => !c.Passed).Select(c => c.Id)];
        Assert.Contains(check, Failing(drive));
        Assert.DoesNotContain(check, Failing("slew-200nm"));
    }

    [Fact]
    public void What_is_closed_has_relief_and_vessel_and_is_refused_without()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, ("freeze_protection", "antifreeze-plate"), ("tank", "closed-300")));
        Check Pressure(BuiltLayout of) => Checked.Of(scenario, of, 0, 0, -10, []).Single(c => c.Id == "pressure-safety");
        Assert.True(Pressure(built).Passed);
        // Each vessel for itself: the loop's and the tank's.
        Assert.Equal([1m, 1], built.Parts.Where(p => p.Part is ReliefValve).Select(p => p.Quantity));
        Assert.False(Pressure(built with { Parts = [.. built.Parts.Where(p => p.Part is not ReliefValve)] }).Passed);
        Assert.False(Pressure(built with { Parts = [.. built.Parts.Where(p => p.Part is not ExpansionVessel)] }).Passed);
        Assert.DoesNotContain(Checked.Of(scenario, LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario)), 0, 0, -10, []), c => c.Id == "pressure-safety");
    }

    [Fact]
    public void Foam_that_would_melt_beside_the_collector_is_replaced_there_and_refused_where_nothing_bears_it()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario));
        var loop = built.Find<DesignedSolar>()!.Loop;
        Assert.True(loop.FirstInsulation!.MaxTemperatureC >= loop.Collector.StagnationC);
        var wrong = Checked.WithLoop(built, l => l with { FirstInsulation = l.Insulation });
        Assert.Contains(Checked.Of(scenario, wrong, 0, 0, -10, []), c => c.Id == "insulation-heat" && !c.Passed);
        Assert.Contains(Checked.Of(scenario, built, 0, 0, -10, []), c => c.Id == "insulation-heat" && c.Passed);
    }

    [Fact]
    public void Which_check_costs_most_is_counted()
    {
        using var small = new SmallScenario(("store_floor_m2 = 3.0", "store_floor_m2 = 1.0"));
        var scenario = small.Read();
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        Layout Barrels(int count) => SmallScenario.Of(scenario, ("barrel", "barrel-200-used"), ("barrel_count", count));
        // A barrel takes 0.58² = 0.34 m²: two fit on 1 m², four and six do not; the tank does not either.
        var counted = RefusalCounter.Count(assessor, [Barrels(2), Barrels(4), Barrels(6), Barrels(6), SmallScenario.Solar(scenario)]);
        var floor = Assert.Single(counted, r => r.CheckId == "store-floor");
        Assert.Equal((3, 4), (floor.Layouts, floor.LookedAt));
        Assert.Equal(assessor.Price(Barrels(4)).BuildPrice, floor.CheapestAlone);
        // Of a large space two thousand are drawn, always the same.
        var drawn = RefusalCounter.Count(assessor, new LayoutSpace(scenario));
        Assert.Contains(drawn, r => r.CheckId == "store-floor" && r.Layouts > 100 && r.LookedAt > r.Layouts);
        Assert.Equal(drawn, RefusalCounter.Count(assessor, new LayoutSpace(scenario)));
    }

    [Theory]
    [InlineData(46.3, 180, true)]
    [InlineData(46.3, 230, true)]
    [InlineData(46.3, 90, true)]
    [InlineData(46.3, 0, false)]
    [InlineData(46.3, 271, false)]
    [InlineData(-38, 0, true)]
    [InlineData(-38, 330, true)]
    [InlineData(-38, 180, false)]
    [InlineData(-38, 91, false)]
    [InlineData(12, 0, true)]
    public void A_collector_that_looks_away_from_the_noon_sun_is_refused(double latitude, double azimuth, bool serves)
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        scenario = scenario with { Place = scenario.Place with { LatitudeDeg = latitude } };
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario, ("azimuth_deg", azimuth)));
        var check = Checked.Of(scenario, built, 0, 0, -18, []).Single(c => c.Id == "faces-sun");
        Assert.Equal(serves, check.Passed);
        Assert.Equal(serves, check.Margin >= 0);
    }

    [Fact]
    public void The_metal_next_to_a_glazed_collector_is_bought_without_asking()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario));
        Assert.Contains(built.Parts, p => p.Part.Id.StartsWith("copper", StringComparison.Ordinal) && p.Purpose.System == "pipe run");
    }

    private static List<string> Failing(params (string From, string To)[] changes)
    {
        using var small = new SmallScenario(changes);
        var scenario = small.Read();
        var built = LayoutBuilder.Build(scenario, SmallScenario.Solar(scenario));
        var price = Pricer.Bill(built.Parts, scenario.Stock).Sum(l => l.Total);
        return [.. Checked.Of(scenario, built, price, 0, -18, []).Where(c => !c.Passed).Select(c => c.Id)];
    }
}
