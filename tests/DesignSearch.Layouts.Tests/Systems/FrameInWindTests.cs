using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Layouts.Words;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Mechanics;
using DesignSearch.Parts.Small;
using DesignSearch.Parts.Solar;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Stands and frames that the wind would take, built, and refused or told; and sound ones that pass. Two flat plates of 1 m by 2 m at 60°, where nothing else is said.</summary>
public sealed class FrameInWindTests : IDisposable
{
    private readonly SmallScenario small = new();
    private readonly Scenario scenario;

    public FrameInWindTests() => scenario = small.Read();

    public void Dispose() => small.Dispose();

    // 62.5 Pa · 4 m² · 1.8 = 450 N a quarter of 2 m off: 225 N·m; (72 + 36) kg · g · 0.05 m = 52.96; friction 2 · 0.1 · 1059.1 N · 0.02 m = 4.24; half as much in hand: 423.3 N·m.
    [Fact]
    public void A_drive_for_a_third_of_the_codes_wind_is_refused()
    {
        Assert.Contains("drive-torque", Failing(scenario, Turned("two-position-rocker", "slew-200nm")));
        Assert.DoesNotContain("drive-torque", Failing(scenario, Turned("two-position-rocker", "slew-600nm")));
        var check = Of(scenario, Turned("two-position-rocker", "slew-600nm"), "drive-torque");
        Validation.Equal("wind W1 drive of a rocker", "torque for 4 m2 at 10 m/s [N m]", 423.3, (1 - check.Margin) * 600, 0.5, "EN 1991-1-4, 7.4.3: 1.80, a quarter of the width off; weight and friction by hand", "MountChecks");
    }

    // 140.6 Pa · 4 m² · 1.8 · 0.5 m = 506 N·m; a gear that holds 200 held the third of it that was asked before.
    [Fact]
    public void A_worm_that_holds_a_third_of_a_gust_is_refused()
    {
        var weak = With(scenario, "slew-600nm", (Drive d) => d with { HoldsNm = 200 });
        var check = Of(weak, Turned("two-position-post", "slew-600nm"), "drive-holding");
        Validation.Equal("wind W1 worm drive holding", "moment of a gust of 15 m/s on 4 m2 [N m]", 506.25, (1 - check.Margin) * 200, 0.5, "EN 1991-1-4, 7.4.3, by hand: 140.6 Pa, 1.80, a quarter of 2 m", "Stand.GustNm");
        Assert.False(check.Passed);
        Assert.DoesNotContain("drive-holding", Failing(scenario, Turned("two-position-post", "slew-600nm")));
    }

    // Lift alone was 334 N an anchor; by moment the back row wants 2061 N each.
    [Fact]
    public void Feet_of_a_fixed_stand_that_the_moment_pulls_out_are_refused()
    {
        var tested = On(s => s with { AnchorHoldsN = 1500 });
        Assert.Contains("anchorage", Failing(tested));
        Assert.DoesNotContain("anchorage", Failing(On(s => s with { AnchorHoldsN = 2100 })));
    }

    // What was bought, 2 x 0.1 m³ a frame, against what the moment about the block's foot wants.
    [Fact]
    public void One_post_in_too_small_a_block_is_refused()
    {
        var built = Build(scenario, Turned("two-position-post", "slew-600nm"));
        Assert.True(Overturning(scenario, built).Passed);
        Assert.False(Overturning(scenario, Listing(built, SmallPartRole.Cement, 0.2m)).Passed);
        Assert.False(Overturning(scenario, Listing(built, SmallPartRole.Cement, 0.9m * Bought(built, SmallPartRole.Cement))).Passed);
        Assert.DoesNotContain(built.Parts, p => p.Part is Holdfast { Form: HoldfastForm.CastBolt or HoldfastForm.GroundScrew });

        // By hand with the block's own side a: 4050 N (0.866 (1.6825 + 0.8) + 0.5 (a/2 + 0.125)) · 1.5 <= 0.9 (1118 N + 19 200 a²) a/2.
        var side = Stand(built).BaseM;
        var tips = 1.5 * 4050 * ((0.8660254 * 2.4825318) + (0.5 * ((side / 2) + 0.125)));
        Assert.Equal(tips, 0.9 * (1117.96 + (19200 * side * side)) * side / 2, 0.002 * tips);
    }

    [Fact]
    public void A_footing_above_the_frost_is_not_built()
    {
        var (shallow, deep) = (On(s => s with { FrostDepthM = 0.8 }), On(s => s with { FrostDepthM = 1.2 }));
        Assert.Contains(Build(shallow).Parts, p => p.Part.Id == "anchor-screw");
        Assert.DoesNotContain(Build(deep).Parts, p => p.Part.Id == "anchor-screw");
        var (above, below) = (Build(shallow, Turned("two-position-post", "slew-600nm")), Build(deep, Turned("two-position-post", "slew-600nm")));
        Assert.Equal((0.8, 1.2), (Stand(above).DepthM, Stand(below).DepthM));
        Assert.False(Overturning(deep, Listing(below, SmallPartRole.Cement, Bought(above, SmallPartRole.Cement))).Passed);
    }

    [Fact]
    public void A_depth_of_frost_that_nobody_gave_is_told()
    {
        var built = Build(scenario, Turned("two-position-post", "slew-600nm"));
        Assert.Contains("frost_depth_m", Overturning(scenario, built).Sentence, StringComparison.Ordinal);
        Assert.Contains(built.Find<DesignedSolar>()!.Cautions, c => c.Text.Contains("frost_depth_m", StringComparison.Ordinal));
        var given = On(s => s with { FrostDepthM = 0.6 });
        Assert.DoesNotContain(Build(given).Find<DesignedSolar>()!.Cautions, c => c.Text.Contains("frost_depth_m", StringComparison.Ordinal));
        Assert.Equal(0.6, Stand(Build(given, Turned("two-position-post", "slew-600nm"))).DepthM);
    }

    [Fact]
    public void A_stand_on_a_wall_gets_bolts_and_is_refused_without()
    {
        var built = Build(scenario, ("mount", "stand-wall"));
        Assert.Equal(["stand-wall", "wall-bolt"], Held(built));
        Assert.NotEmpty(Build(Lacking("wall-bolt"), ("mount", "stand-wall")).Missing);
        // The upper four take the wind about the lower row, (1 + 0.25) m up the slope of 2 m, and the weight in front: ((1.5 · 4050 · 1.25) + (1.1 · 1020 · 0.5)) / 1.732 / 4.
        Assert.Equal(1177, Stand(built).PullN, 2.0);
        Assert.Contains("anchorage", Failing(On(s => s with { AnchorHoldsN = 1100 }), ("mount", "stand-wall")));
        // Flat: 562.5 · 4 · 1.3 N at three quarters of 2 m, the weight at half of it, brackets at least a fifth of 2 m high.
        Assert.Equal(((1.5 * 2925 * 1.5) + (1.1 * 1019.9)) / 0.4 / 4, Stand(Build(scenario, ("mount", "stand-wall"), ("tilt_deg", 0))).PullN, 2.0);
    }

    [Fact]
    public void Ballast_is_bought_by_weight_and_refused_where_it_is_too_light()
    {
        var built = Build(scenario, ("mount", "stand-ballast"));
        Assert.Equal(["slabs-ballast", "stand-ballast"], Held(built));
        Assert.True(Overturning(scenario, built).Passed);
        Assert.False(Overturning(scenario, Listing(built, SmallPartRole.Ballast, 0.95m * Bought(built, SmallPartRole.Ballast))).Passed);
        Assert.False(Overturning(scenario, Listing(built, SmallPartRole.Ballast, 0)).Passed);

        // It slides before it tips: (1.5 · 4050 · 0.866 / 0.4 + 1.5 · 4050 · 0.5) / 0.9 - 3060 N, in kilograms.
        Assert.Equal(((6075 * 0.8660254 / 0.4) + (6075 * 0.5)) / 0.9 / 9.80665 - 312, Stand(built).BallastKg, 0.5);
    }

    [Fact]
    public void A_cast_stand_has_its_concrete()
    {
        var cast = Build(Lacking("anchor-screw", "anchor-screw-long"));
        Assert.Equal(["anchor-bolt", "cement-mix", "stand-timber"], Held(cast));
        Assert.False(Overturning(scenario, Listing(cast, SmallPartRole.Cement, 0)).Passed);

        // Base 1.2 + 0.3 m, 0.8 m down: 4050 (0.866 · 2.3825 + 0.5 · 0.875) = 10 128 N·m; 1.5 · 10 128 / (0.9 · 0.75) - 1177 N of stand = 21 330 N.
        Assert.Contains("tips a frame with 10.1 kN·m", Written.Sentence(SolarCheckWords.Footing(Stand(cast), 1)), StringComparison.Ordinal);
        Validation.Equal("wind F cast feet of a stand", "concrete under 4 m2 at 60 deg, 30 m/s [m3]", 0.8888, Stand(cast).ConcreteM3, 0.001, "EN 1991-1-4, 7.4.3, and EN 1990, table A1.2(A), by hand; concrete 24 kN/m3 from memory", "Stand.ConcreteM3");

        // Hardly any wind: four blocks 0.3 m square; and never shallower than the 305 mm of US codes.
        var calm = Lacking("anchor-screw", "anchor-screw-long") with { Site = scenario.Site with { DesignWindMPerS = 5, FrostDepthM = 0 } };
        Assert.Equal((0.305, 4 * 0.09 * 0.305), (Stand(Build(calm)).DepthM, Math.Round(Stand(Build(calm)).ConcreteM3, 9)));
    }

    [Fact]
    public void A_frame_without_stops_or_bolt_is_refused()
    {
        var built = Build(scenario, Turned("two-position-rocker", "slew-600nm"));
        Check Lock(BuiltLayout of) => Checked.Of(scenario, of, 0, 0, -10, []).Single(c => c.Id == "storm-lock");
        Assert.True(Lock(built).Passed);
        foreach (var form in new[] { HoldfastForm.Stops, HoldfastForm.HandBolt })
            Assert.False(Lock(built with { Parts = [.. built.Parts.Where(p => p.Part is not Holdfast fast || fast.Form != form)] }).Passed);
        // 4050 N a quarter of 2 m off.
        Assert.Equal(2025, Stand(built).TurnsNm, 0.5);
        Assert.NotEmpty(Build(Lacking("stops-timber", "stops-steel"), Turned("two-position-rocker", "slew-600nm")).Missing);
        var weak = With(Lacking("bolt-hand-heavy"), "bolt-hand", (Holdfast h) => h with { HoldsN = 3000 });
        Assert.NotEmpty(Build(weak, Turned("two-position-rocker", "slew-600nm")).Missing);
    }

    [Fact]
    public void A_frame_turned_by_hand_has_no_ghosts_and_says_who_turns_it()
    {
        var built = Build(scenario, ("mount", "two-position-hand"), ("limit_deg", 30), ("switch_hours", 4.5), ("collector_count", 1));
        var (solar, settings) = (built.Find<DesignedSolar>()!, built.Settings(scenario));
        Assert.DoesNotContain(settings, s => s.What.Contains("imit switch", StringComparison.Ordinal) || s.What.Contains("Timer", StringComparison.Ordinal));
        Assert.Contains(settings, s => s.What == "Turning the frame by hand");
        Assert.Contains(settings, s => s.What == "Before a gale" && s.Reason.Contains("by hand", StringComparison.Ordinal));
        Assert.Equal(2, Bought(built, SmallPartRole.HoseLoop));
        Assert.Equal(["bolt-hand", "cement-mix", "grease-outdoor", "hose-loop-steel-20", "stops-timber", "two-position-hand"], Held(built));
        Assert.Contains(solar.Cautions, c => c.Topic == "Turned by hand");
        Assert.Single(solar.Doubts);
        Assert.DoesNotContain(solar.Upkeep, u => u.What.Contains("switch", StringComparison.Ordinal));
        Assert.Empty(Build(scenario, Turned("two-position-rocker", "slew-600nm")).Find<DesignedSolar>()!.Doubts);
    }

    // 30 m/s on a map are the mean of ten minutes: by the sea a gust is half as fast again at 2 m.
    [Fact]
    public void A_maps_mean_wind_is_not_taken_for_a_gust()
    {
        Assert.DoesNotContain("mount-wind", Failing(scenario));
        Assert.Contains("mount-wind", Failing(On(s => s with { Terrain = WindTerrain.Sea })));
        var stand = Stand(Build(On(s => s with { Terrain = WindTerrain.Fields, DesignWindMPerS = 24 })));
        Validation.Equal("wind W1 storm over fields", "pressure of a storm of 24 m/s, mean, at 1.4 m [Pa]", 512, stand.StormPa, 1, "EN 1991-1-4, 4.3 to 4.5, terrain II, recomputed by hand", "SiteLimits.StormPa");
        using var named = new SmallScenario(("mains_at_greenhouse = false", "mains_at_greenhouse = false\nwind_terrain = \"suburb\"\nfrost_depth_m = 0.9"));
        Assert.Equal((WindTerrain.Suburb, 0.9), (named.Read().Site.Terrain, named.Read().Site.FrostDepthM));
        using var wrong = new SmallScenario(("mains_at_greenhouse = false", "mains_at_greenhouse = false\nwind_terrain = \"beach\""));
        Assert.Contains("sea", Assert.Single(wrong.Faults()).Expected, StringComparison.Ordinal);
    }

    // Ten plates in a row 10 m long and 1.73 m high, 0.4 m over the ground: a wall, 2.16 and more at its ends, where 1.5 was reckoned.
    [Fact]
    public void A_long_low_row_is_a_wall()
    {
        var low = With(scenario, "stand-steel", (CollectorMount m) => m with { ClearanceM = 0.4 });
        var ratio = 10 / (2 * Math.Sin(Math.PI / 3));
        Assert.Equal(LowWall.End(ratio, 1), Stand(Build(low, ("mount", "stand-steel"), ("collector_count", 10))).Wind.Up, 1e-9);
        Assert.Equal(1.8, Stand(Build(scenario, ("mount", "stand-steel"), ("collector_count", 10))).Wind.Up);
    }

    [Fact]
    public void A_rocker_is_reckoned_as_steep_as_it_turns()
    {
        var flat = Build(scenario, [.. Turned("two-position-rocker", "slew-600nm"), ("tilt_deg", 20)]);
        // cos 20° · cos 30°: 35.5°, a signboard.
        Assert.Equal(1.8, Stand(flat).Wind.Up);
        Assert.Equal(1.4, Stand(Build(scenario, ("tilt_deg", 20))).Wind.Up, 1e-9);
    }

    [Fact]
    public void A_drive_that_slips_is_refused_without_a_bolt_that_falls_home_and_where_no_hole_can_be()
    {
        (string, object)[] panel = [.. Turned("two-position-light", "spur-40nm"), ("collector", "window-panel-1m1"), ("collector_count", 1)];
        var calm = On(s => s with { WorkingWindMPerS = 9 });
        var without = calm with { Catalogue = Lacking("bolt-spring-24v").Catalogue };
        Assert.Contains("drive-locking", Failing(without, panel));
        Assert.Contains("drive-holding", Failing(without, panel));
        Assert.Contains("drive-locking", Failing(calm, [.. panel, ("mount", "sun-follower-rocker")]));
        Assert.Equal("bolt-hand", Stand(Build(without, panel)).Bolt!.Id);

        // Sound: with it, all three pass; its coil draws beside the motor.
        Assert.DoesNotContain(Failing(calm, panel), id => id is "drive-locking" or "drive-holding" or "drive-torque" or "storm-lock" or "anchorage");
        Assert.Contains(Build(calm, panel).Parts, p => p.Part.Id == "bolt-spring-24v");
        var circuit = Build(calm, panel).Systems.SelectMany(s => s.Circuits).Single(c => c.Device == "drive of the frame");
        Assert.Equal((45, 8 + (15 / 24.0)), (circuit.Watts, circuit.StartA));
    }

    // Sound: 75.6 Pa · 1.1 m² · 1.8 · 0.225 m = 33.7 N·m, weight 2.7, friction 0.1, half in hand: 54.8 of 60. On the frame of 36 kg it wants half as much again.
    [Theory]
    [InlineData("worm-60nm")]
    [InlineData("screw-actuator-80nm")]
    public void A_small_panel_on_a_light_frame_turns_by_a_small_drive(string drive)
    {
        var windy = On(s => s with { WorkingWindMPerS = 11 });
        (string, object)[] Panel(string mount) => [.. Turned(mount, drive), ("collector", "window-panel-1m1"), ("collector_count", 1)];
        Assert.DoesNotContain(Failing(windy, Panel("two-position-light")), id => id.StartsWith("drive", StringComparison.Ordinal));
        Assert.Contains("drive-torque", Failing(windy, Panel("two-position-rocker")));
    }

    // Sound: what stands on ballast or in a block asks nothing of an anchor.
    [Fact]
    public void A_weak_anchor_is_nothing_to_a_block_or_to_ballast()
    {
        var soft = On(s => s with { AnchorHoldsN = 300 });
        Assert.Contains("anchorage", Failing(soft));
        Assert.DoesNotContain(Failing(soft, ("mount", "stand-ballast")), id => id is "anchorage" or "overturning");
        Assert.DoesNotContain(Failing(soft, Turned("two-position-post", "slew-600nm")), id => id is "anchorage" or "overturning");
    }

    [Fact]
    public void Hours_after_dawn_are_said_only_of_a_part_that_counts_them()
    {
        var turned = Turned("two-position-rocker", "slew-600nm");
        var counted = Build(scenario, turned);
        Assert.Equal((1, 0), (Bought(counted, SmallPartRole.DelayRelay), Bought(counted, SmallPartRole.Timer)));
        Assert.Contains(counted.Settings(scenario), s => s is { What: "Delay relay of the frame", Value: "5.5 h after dawn" });
        var bare = Lacking("relay-delay-24v");
        var timed = Build(bare, turned);
        Assert.Equal((0, 1), (Bought(timed, SmallPartRole.DelayRelay), Bought(timed, SmallPartRole.Timer)));
        var timer = timed.Settings(bare).Single(s => s.What == "Timer of the frame");
        Assert.DoesNotContain("dawn", timer.Value, StringComparison.Ordinal);
        Assert.Matches(@"^November \d+:\d0, December \d+:\d0, January \d+:\d0, February \d+:\d0 and March \d+:\d0, standard time$", timer.Value);
    }

    private static (string, object)[] Turned(string mount, string drive) => [("mount", mount), ("drive", drive), ("limit_deg", 30), ("switch_hours", 5.5), ("shaft_seal", "cheapest")];

    private static BuiltLayout Build(Scenario at, params (string, object)[] choices) => LayoutBuilder.Build(at, SmallScenario.Solar(at, choices));

    private static Stand Stand(BuiltLayout built) => built.Find<DesignedSolar>()!.Loop.Stand;

    private static Check Of(Scenario at, (string, object)[] choices, string id) => Checked.Of(at, Build(at, choices), 0, 0, -10, []).Single(c => c.Id == id);

    private static List<string> Failing(Scenario at, params (string, object)[] choices) => [.. Checked.Of(at, Build(at, choices), 0, 0, -10, []).Where(c => !c.Passed).Select(c => c.Id)];

    private static Check Overturning(Scenario at, BuiltLayout built) => Checked.Of(at, built, 0, 0, -10, []).Single(c => c.Id == "overturning");

    private static List<string> Held(BuiltLayout built) => [.. built.Parts.Where(p => p.Purpose.System == "mount").Select(p => p.Part.Id).Order(StringComparer.Ordinal)];

    private static decimal Bought(BuiltLayout built, SmallPartRole role) => built.Parts.Where(p => p.Part is SmallPart part && part.Role == role).Sum(p => p.Quantity);

    private static BuiltLayout Listing(BuiltLayout built, SmallPartRole role, decimal quantity) =>
        built with { Parts = [.. built.Parts.Select(p => p.Part is SmallPart part && part.Role == role ? p with { Quantity = quantity } : p)] };

    private static Scenario With<T>(Scenario at, string id, Func<T, T> change)
        where T : class, IPart => at with { Catalogue = Catalogue.Of([.. at.Catalogue.All.Select(p => p.Id == id && p is T part ? change(part) : p)]) };

    private Scenario On(Func<SiteLimits, SiteLimits> change) => scenario with { Site = change(scenario.Site) };

    private Scenario Lacking(params string[] ids) => scenario with { Catalogue = Catalogue.Of([.. scenario.Catalogue.All.Where(p => !ids.Contains(p.Id))]) };
}
