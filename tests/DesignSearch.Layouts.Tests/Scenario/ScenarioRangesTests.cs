using System.Globalization;
using System.Text.RegularExpressions;
using DesignSearch.Layouts.Design.Brief;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Every number of a scenario: taken at both ends of its range, refused at its place beyond either, and what it is where nothing is said.</summary>
public sealed class ScenarioRangesTests
{
    private const string Hard = "return_years = 10";

    // Key, what it stands behind where the sample is silent, both ends, and whether it counts something.
    public static TheoryData<string, string, double, double, bool> Ranges => new()
    {
        { "length_m", "[greenhouse]", 1, 60, false },
        { "width_m", "[greenhouse]", 1, 20, false },
        { "eaves_m", "[greenhouse]", 0.3, 6, false },
        { "ridge_m", "[greenhouse]", 0.5, 10, false },
        { "ridge_azimuth_deg", "[greenhouse]", 0, 360, false },
        { "cover_u_w_per_m2k", "[greenhouse]", 0.5, 9, false },
        { "cover_light", "[greenhouse]", 0.2, 0.95, false },
        { "cover_layers", "[greenhouse]", 1, 4, true },
        { "air_changes_per_hour", "[greenhouse]", 0.1, 20, false },
        { "air_changes_per_hour_per_m_per_s", "[greenhouse]", 0, 5, false },
        { "edge_loss_w_per_mk", "[greenhouse]", 0, 3, false },
        { "vent_area_m2", "[greenhouse]", 0, 50, false },
        { "frost_limit_c", "[greenhouse]", -10, 20, false },
        { "base_wall_m", "[greenhouse]", 0, 3, false },
        { "base_wall_u_w_per_m2k", "[greenhouse]", 0.1, 5, false },
        { "base_wall_capacity_kj_per_m2k", "[greenhouse]", 0, 2000, false },
        { "door_m2", "[greenhouse]", 0, 20, false },
        { "door_u_w_per_m2k", "[greenhouse]", 0.1, 8, false },
        { "door_light", "[greenhouse]", 0, 0.95, false },
        { "door_leak_m3_per_h", "[greenhouse]", 0, 500, false },
        { "floor_below_m", "[greenhouse]", 0, 3, false },
        { "roof_cover_u_w_per_m2k", "[greenhouse]", 0.5, 9, false },
        { "side_cover_light", "[greenhouse]", 0.2, 0.95, false },
        { "end_cover_layers", "[greenhouse]", 1, 4, true },
        { "latitude_deg", "[site]", -66, 66, false },
        { "longitude_deg", "[site]", -180, 180, false },
        { "elevation_m", "[site]", -400, 5000, false },
        { "zone_hours", "[site]", -12, 14, false },
        { "pipe_run_m", "[site]", 0, 200, false },
        { "collector_above_tank_m", "[site]", -20, 20, false },
        { "mains_cable_m", "[site]", 0, 500, false },
        { "collector_space_m2", "[site]", 0, 500, false },
        { "store_floor_m2", "[site]", 0, 200, false },
        { "working_wind_m_per_s", "[site]", 0, 40, false },
        { "design_wind_m_per_s", "[site]", 5, 80, false },
        { "mains_limit_a", "[site]", 1, 200, false },
        { "floor_bears_kg_per_m2", "[site]", 50, 20000, false },
        { "mains_loop_ohm", "[site]", 0.02, 20, false },
        { "anchor_holds_n", "[site]", 50, 50000, false },
        { "frost_depth_m", "[site]", 0, 3, false },
        { "heap_pipe_m", "[site]", 1, 100, false },
        { "warm_up_days", "[season]", 1, 60, true },
        { "weight", "kind = \"hard\"", 0.001, 1000, false },
        { "return_years", "kind = \"hard\"", 2, 100, false },
        { "lowest_c", Hard, -60, 15, false },
        { "power_cut_hours", Hard, 0, 24, true },
        { "budget", "[money]", 0, 10_000_000, false },
        { "years", "[money]", 1, 50, true },
        { "interest", "[money]", 0, 0.5, false },
        { "tariff_per_kwh", "[money]", 0, 100, false },
        { "build_hours", "[money]", 1, 10000, false },
        { "labour_rate_per_hour", "[money]", 0, 10000, false },
        { "licensed_rate_per_hour", "[money]", 0, 10000, false },
        { "night_tariff_per_kwh", "[money]", 0, 100, false },
        { "night_from_hour", "[money]", 0, 23, true },
        { "night_to_hour", "[money]", 0, 23, true },
        { "evaluations", "[search]", 1, 1_000_000_000, false },
        { "ranked", "[search]", 1, 100, true },
        { "unseen_winters", "[search]", 0, 1000, true },
        { "certainty", "[search]", 0, 0.99, false },
    };

    [Theory]
    [MemberData(nameof(Ranges))]
    public void A_number_is_taken_at_both_ends_and_refused_beyond(string key, string behind, double low, double high, bool counts)
    {
        using var small = new SmallScenario();
        var path = Path.Combine(small.Folder, "scenario.toml");
        var text = File.ReadAllText(path);
        var beyond = counts ? 1 : 0.001 * Math.Max(1, high);
        foreach (var (value, taken) in new[] { (low, true), (high, true), (low - beyond, false), (high + beyond, false) })
        {
            var written = value.ToString("R", CultureInfo.InvariantCulture);
            var own = new Regex($@"(?m)^{key} = [^#\r\n]*");
            var changed = own.IsMatch(text) ? own.Replace(text, $"{key} = {written} ", 1) : text.Replace(behind + "\n", $"{behind}\n{key} = {written}\n", StringComparison.Ordinal);
            File.WriteAllText(path, changed);
            var line = 1 + changed[..changed.IndexOf($"\n{key} = {written}", StringComparison.Ordinal)].Count(c => c == '\n') + 1;
            var range = FormattableString.Invariant($"number from {low} to {high}");
            var told = small.Faults().Where(f => f.Line == line && f.Expected.Contains(range, StringComparison.Ordinal)).ToList();
            Assert.Equal(taken ? [] : [written], told.Select(f => f.Value));
        }
    }

    public static TheoryData<string, double, int> Silent => new()
    {
        { "ridge_azimuth_deg", 90, 0 }, { "cover_layers", 1, 1 }, { "air_changes_per_hour", 1, 2 }, { "air_changes_per_hour_per_m_per_s", 0.15, 3 }, { "edge_loss_w_per_mk", 1.26, 4 },
        { "vent_area_m2", 0.5, 5 }, { "frost_limit_c", 3, 6 }, { "elevation_m", 0, 7 }, { "zone_hours", 1, 8 }, { "collector_above_tank_m", 0, 9 }, { "mains_cable_m", 0, 10 },
        { "working_wind_m_per_s", 12, 11 }, { "design_wind_m_per_s", 30, 12 }, { "years", 10, 13 }, { "interest", 0.03, 14 }, { "evaluations", 6000, 15 }, { "ranked", 12, 16 }, { "seed", 1, 17 },
        { "return_years", 10, 18 }, { "warm_up_days", 30, 19 }, { "unseen_winters", 60, 20 },
    };

    [Theory]
    [MemberData(nameof(Silent))]
    public void Where_nothing_is_said_the_usual_is_taken(string key, double usual, int at)
    {
        using var small = new SmallScenario();
        var path = Path.Combine(small.Folder, "scenario.toml");
        // Nothing in the sample has the usual value of what is asked, but where only silence can be.
        File.WriteAllText(path, Regex.Replace(File.ReadAllText(path), $@"(?m)^{key} = .*\n", ""));
        Assert.Equal(usual, Figures(small.Read())[at], 1e-12);
    }

    [Theory]
    [InlineData("11-14", true)]
    [InlineData("11-13", false)]
    [InlineData("10-31", true)]
    public void A_season_has_fourteen_days_at_least_and_may_go_over_the_new_year(string end, bool taken)
    {
        using var small = new SmallScenario(("end = \"03-31\"", $"end = \"{end}\""));
        Assert.Equal(taken ? [] : [("13 days", "a season of 14 days or more")], small.Faults().Select(f => (f.Value, f.Expected)));
    }

    [Theory]
    [InlineData(8, 80, true)]
    [InlineData(8, 0, true)]
    [InlineData(8, 80.1, false)]
    [InlineData(8, -0.1, false)]
    [InlineData(7, 5, false)]
    [InlineData(9, 5, false)]
    public void A_horizon_has_eight_heights(int count, double deg, bool taken)
    {
        using var small = new SmallScenario(("horizon_deg = [0, 4, 8, 6, 3, 7, 9, 4]", FormattableString.Invariant($"horizon_deg = [{string.Join(", ", Enumerable.Repeat(deg.ToString(CultureInfo.InvariantCulture), count))}]")));
        Assert.Equal(taken, small.Faults().Count == 0);
        Assert.All(small.Faults(), f => Assert.True(f.Line > 1 && f.Expected.Contains("from 0 to 80", StringComparison.Ordinal) | f.Expected.Contains('8'), f.ToString()));
    }

    [Theory]
    [InlineData(1.9, false)]
    [InlineData(1.91, true)]
    public void A_ridge_lies_above_the_eaves(double ridge, bool taken)
    {
        using var small = new SmallScenario(("ridge_m = 2.7", FormattableString.Invariant($"ridge_m = {ridge}")));
        Assert.Equal(taken ? [] : ["a ridge above the eaves"], small.Faults().Select(f => f.Expected));
    }

    [Theory]
    [InlineData("night_tariff_per_kwh = 0.2\nnight_from_hour = 22\nnight_to_hour = 6", "")]
    [InlineData("night_tariff_per_kwh = 0.2\nnight_from_hour = 6\nnight_to_hour = 6", "another hour than 'night_from_hour'")]
    public void A_night_has_hours(string written, string fault)
    {
        using var small = new SmallScenario(("tariff_per_kwh = 0.42", "tariff_per_kwh = 0.42\n" + written));
        Assert.Equal(fault.Length > 0 ? [fault] : [], small.Faults().Select(f => f.Expected));
    }

    [Fact]
    public void Money_is_rounded_to_hundredths_and_levels_of_prices_are_four()
    {
        foreach (var word in new[] { "usual", "low", "high", "second-hand" })
        {
            using var small = new SmallScenario(("budget = 4200", $"budget = 4200.126\nprice_level = \"{word}\"\nlabour_rate_per_hour = 7.124\nlicensed_rate_per_hour = 61.128"));
            var money = small.Read().Money;
            Assert.Equal((4200.13m, 7.12m, 61.13m), (money.Budget, money.LabourRatePerHour, money.LicensedRatePerHour));
            Assert.Equal(word.Replace("-", "", StringComparison.Ordinal), money.Prices.ToString(), ignoreCase: true);
        }
    }

    private static double[] Figures(Scenario s) =>
    [
        s.Greenhouse.RidgeAzimuthDeg, s.Greenhouse.CoverLayers, s.Greenhouse.AirChangesPerHour, s.Greenhouse.AirChangesPerHourPerMPerS, s.Greenhouse.EdgeLossWPerMK, s.Greenhouse.VentAreaM2, s.Greenhouse.FrostLimitC,
        s.Place.ElevationM, s.Place.ZoneHours, s.Site.CollectorAboveTankM, s.Site.MainsCableM, s.Site.WorkingWindMPerS, s.Site.DesignWindMPerS, s.Money.Years, s.Money.Interest, s.Search.Evaluations, s.Search.Ranked, s.Search.Seed,
        s.Winters[1].ReturnYears, s.Season.WarmUpDays, s.Search.UnseenWinters,
    ];
}
