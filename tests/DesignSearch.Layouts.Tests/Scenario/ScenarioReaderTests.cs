using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Systems;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class ScenarioReaderTests
{
    [Fact]
    public void Eight_different_mistakes_are_told_at_once_each_with_its_place()
    {
        using var scenario = new SmallScenario(
            ("latitude_deg = 46.3", "latitude_deg = 146.3"),
            ("length_m = 5.0", "length_m = 5,0"),
            ("cover_layers = 2", "cover_layers = \"two\""),
            ("start = \"11-01\"", "start = \"13-41\""),
            ("budget = 4200", "budgte = 4200"),
            ("heater_set_c = 4", "heater_set_c = 400"),
            ("tank = \"cage-1000-used\"", "tank = \"cage-1000-usde\""),
            ("kind = \"hard\"", "kind = \"arctic\""));
        var faults = scenario.Faults();
        string[] values = ["146.3", "two", "13-41", "budgte", "400", "cage-1000-usde", "arctic"];
        Assert.All(values, v => Assert.Contains(faults, f => f.Value == v && f.Line > 0 && f.Column > 0 && f.Expected.Length > 0 && f.File.EndsWith("scenario.toml", StringComparison.Ordinal)));
        Assert.Contains(faults, f => f.Value.StartsWith("length_m = 5,0", StringComparison.Ordinal) && f.Line > 0);
        Assert.Contains(faults, f => f.Expected.Contains("cage-1000-used", StringComparison.Ordinal));
        Assert.Contains(faults, f => f.Expected.Contains("'budget'", StringComparison.Ordinal));
    }

    [Fact]
    public void A_scenario_that_is_not_there_is_one_fault_and_not_one_for_each_key()
    {
        using var small = new SmallScenario();
        File.Delete(Path.Combine(small.Folder, "scenario.toml"));
        Assert.Single(small.Faults());
    }

    [Fact]
    public void A_scenario_without_fault_is_read_whole()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        Assert.Equal(46.3, scenario.Place.LatitudeDeg);
        Assert.Equal(4200m, scenario.Money.Budget);
        Assert.Equal(1, scenario.Winters.Sum(w => w.Weight), 1e-12);
        Assert.Equal(SystemList.All.Choices.All.Count, scenario.Choices.Count);
        Assert.Equal([2.0, 4, 6], scenario.LevelsOf(scenario.Choice("barrel_count")).Select(l => l.Number));
    }

    [Fact]
    public void A_range_makes_its_levels_and_a_missing_folder_is_told()
    {
        using var range = new SmallScenario(("barrel_count = [2, 4, 6]", "barrel_count = { from = 1, to = 7, step = 3 }"));
        Assert.Equal([1.0, 4, 7], Levels(range.Read(), "barrel_count").Select(l => l.Number));
        using var lost = new SmallScenario(("/starter\"", "/nowhere\""));
        Assert.Contains(lost.Faults(), f => f.Value.EndsWith("/nowhere", StringComparison.Ordinal) && f.Line > 0);
    }

    [Theory]
    [InlineData("azimuth_deg = 180", "azimuth_deg = { from = 0, to = 199, step = 1 }", null)]
    [InlineData("azimuth_deg = 180", "azimuth_deg = { from = 0, to = 200, step = 1 }", "'to' not below 'from', and at most 200 steps")]
    [InlineData("azimuth_deg = 180", "azimuth_deg = { from = 9, to = 9, step = 1 }", null)]
    [InlineData("azimuth_deg = 180", "azimuth_deg = { from = 9, to = 8, step = 1 }", "'to' not below 'from', and at most 200 steps")]
    [InlineData("azimuth_deg = 180", "azimuth_deg = []", "at least one value for 'azimuth_deg'")]
    [InlineData("barrel_count = [2, 4, 6]", "barrel_count = { from = 1, to = 2, step = 0.5 }", "whole numbers for 'barrel_count'")]
    public void Levels_are_taken_to_the_ends_of_what_there_may_be(string line, string written, string? told)
    {
        using var small = new SmallScenario((line, written));
        Assert.Equal(told is null ? [] : [told], small.Faults().Select(f => f.Expected));
    }

    [Fact]
    public void Two_hundred_values_may_be_listed_and_not_one_more()
    {
        foreach (var (count, told) in (ReadOnlySpan<(int, int)>)[(200, 0), (201, 1)])
        {
            using var small = new SmallScenario(("azimuth_deg = 180", "azimuth_deg = [" + string.Join(", ", Enumerable.Range(0, count)) + "]"));
            Assert.Equal(told, small.Faults().Count(f => f.Expected == "at most 200 values for 'azimuth_deg'"));
        }
    }

    [Fact]
    public void A_season_too_short_to_hold_a_cold_spell_is_refused()
    {
        using var small = new SmallScenario(("end = \"03-31\"", "end = \"11-03\""));
        Assert.Contains(small.Faults(), f => f.Value == "3 days" && f.Line > 0 && f.Expected.Contains("14 days", StringComparison.Ordinal));
    }

    [Fact]
    public void South_of_the_equator_the_season_and_the_usual_direction_turn_round()
    {
        using var small = new SmallScenario(("latitude_deg = 46.3", "latitude_deg = -46.3"), ("start = \"11-01\"\nend = \"03-31\"\n", ""), ("azimuth_deg = 180\n", ""));
        var scenario = small.Read();
        Assert.Equal((5, 9), (scenario.Season.StartMonth, scenario.Season.EndMonth));
        Assert.Equal(0, Assert.Single(scenario.LevelsOf(scenario.Choice("azimuth_deg"))).Number);
    }

    private static IReadOnlyList<ChoiceValue> Levels(Scenario scenario, string key) => scenario.LevelsOf(scenario.Choice(key));
}
