using System.Globalization;
using System.Text.RegularExpressions;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Every number that may be chosen: taken at both ends, refused at its place beyond either, whole where it counts, and what is tried where nothing is said.</summary>
public sealed class NumberChoicesTests
{
    // Key, ends, whether it counts pieces, what a silent layout means and what a silent scenario tries, at 46° north with a limit of 2 °C: thermostats count from the limit.
    public static TheoryData<string, double, double, bool, double, double[]> All => new()
    {
        { "collector_count", 1, 40, true, 2, [1, 2, 3, 4] },
        { "limit_deg", 5, 90, false, 30, [20, 30, 45] },
        { "switch_hours", 2, 9, false, 5.5, [4.5, 5.5] },
        { "steps", 3, 15, true, 5, [5] },
        { "azimuth_deg", 0, 359, false, 180, [180] },
        { "tank_count", 1, 6, true, 1, [1] },
        { "flow_l_per_min_m2", 0.2, 2, false, 0.9, [0.9] },
        { "start_difference_k", 2, 20, false, 8, [8] },
        { "stop_difference_k", 0.5, 10, false, 3, [3] },
        { "release_count", 1, 200, true, 1, [1, 2] },
        { "release_set_c", 0, 25, false, 5, [5] },
        { "release_band_k", 0.2, 6, false, 1, [1] },
        { "heater_set_c", 0, 25, false, 4, [4, 5] },
        { "barrel_count", 1, 40, true, 4, [2, 4, 6] },
        { "bench_set_c", 0, 25, false, 4, [4, 5] },
        { "compost_m3", 1, 60, false, 12, [8, 12] },
        { "compost_coil_m", 10, 400, false, 100, [75, 150] },
        { "compost_set_c", 0, 25, false, 5, [5] },
        { "compost_rest_c", 0, 60, false, 40, [40, 45] },
        { "compost_built_days", 0, 120, true, 0, [0, 30] },
        { "release_stop_k", -10, 10, false, 1, [1] },
        { "gather_above_c", 0, 25, false, 0, [0] },
        { "compost_glycol_percent", 0, 50, false, 40, [30, 40, 48] },
        { "day_pipe_m_per_m2", 1, 8, false, 4, [2, 4] },
        { "day_pipe_depth_m", 0.3, 1, false, 0.5, [0.5] },
        { "day_charge_c", 8, 25, false, 19, [19] },
        { "day_set_c", 0, 20, false, 6, [6] },
        { "heat_pump_set_c", 0, 25, false, 4, [4] },
        { "tilt_deg", 0, 90, false, double.NaN, [45, 60, 75] },
    };

    [Theory]
    [MemberData(nameof(All))]
    public void A_number_is_taken_at_both_ends_and_refused_beyond(string key, double low, double high, bool counts, double silent, double[] tried)
    {
        using var small = new SmallScenario();
        var path = Path.Combine(small.Folder, "scenario.toml");
        var text = Regex.Replace(File.ReadAllText(path), $@"(?m)^{key} = .*\n", "");
        var scenario = small.Read();
        var (choice, ground) = ((NumberChoice)scenario.Choice(key), new ChoiceGround(46.3, 2));
        Assert.Equal(tried, choice.Usual(scenario.Catalogue, ground).Select(v => v.Number));
        if (double.IsFinite(silent))
            Assert.Equal(silent, choice.Silent(ground).Number);
        var beyond = counts ? 1 : 0.01;
        foreach (var (value, taken) in new[] { (low, true), (high, true), (low - beyond, false), (high + beyond, false), (low + 0.25, !counts) })
        {
            var written = value.ToString("R", CultureInfo.InvariantCulture);
            var changed = text.Replace("[choices]\n", $"[choices]\n{key} = {written}\n", StringComparison.Ordinal);
            File.WriteAllText(path, changed);
            var line = changed[..changed.IndexOf($"\n{key} = {written}", StringComparison.Ordinal)].Count(c => c == '\n') + 2;
            var told = small.Faults().Where(f => f.Line == line).ToList();
            Assert.Equal(taken ? [] : [(written, key.Length + 4)], told.Select(f => (f.Value, f.Column)));
            Assert.All(told, f => Assert.Contains(key, f.Expected, StringComparison.Ordinal));
            if (taken)
                Assert.Equal([value], small.Read().LevelsOf(scenario.Choice(key)).Select(l => l.Number));
        }
    }

    [Fact]
    public void No_number_is_left_out_here()
    {
        // What the supply's own two are is chosen of the catalogue's sizes.
        var told = All.Select(row => (string)row[0]).Concat(["supply_w", "cable_mm2"]).Order(StringComparer.Ordinal);
        Assert.Equal(told, SystemList.All.Choices.All.OfType<NumberChoice>().Select(c => c.Key).Order(StringComparer.Ordinal));
    }

    // South of the equator the sun stands in the north; a thermostat never counts beyond its ends.
    [Fact]
    public void What_hangs_on_the_place_follows_it()
    {
        var choices = SystemList.All.Choices.All.OfType<NumberChoice>().ToDictionary(c => c.Key);
        Assert.Equal(0, choices["azimuth_deg"].Silent(new(-44, 2)).Number);
        Assert.Equal(180, choices["azimuth_deg"].Silent(new(0, 2)).Number);
        Assert.Equal(0, choices["heater_set_c"].Silent(new(46, -10)).Number);
        Assert.Equal(20, choices["day_set_c"].Silent(new(46, 20)).Number);
        Assert.All(choices.Values, c => Assert.Equal(0, c.AtRest.Number));
    }
}
