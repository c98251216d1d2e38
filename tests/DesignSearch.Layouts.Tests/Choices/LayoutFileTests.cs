using DesignSearch.Files;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems;
using Xunit;

namespace DesignSearch.Layouts.Tests;

public sealed class LayoutFileTests
{
    [Fact]
    public void A_layout_comes_back_from_its_file_as_it_was()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var layout = SmallScenario.Solar(scenario, ("heater", "fan-heater-1kw"), ("heater_set_c", 4.25), ("barrel", "barrel-200-used"), ("barrel_count", 4));
        var path = Path.Combine(small.Folder, "layout.toml");
        File.WriteAllText(path, LayoutFile.Write(layout, "a title\nwith a line break"));
        var faults = new FaultList();
        var back = LayoutFileReader.Read(path, "layout.toml", scenario, faults);
        Assert.Empty(faults.Faults);
        Assert.Equal(layout.Awake.Select(a => (a.Choice.Key, a.Value)), back.Awake.Select(a => (a.Choice.Key, a.Value)));
    }

    [Fact]
    public void What_a_file_leaves_out_is_not_there_and_a_half_named_collector_is_a_fault()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var path = Path.Combine(small.Folder, "layout.toml");
        File.WriteAllText(path, "format = 1\n[choices]\n");
        var faults = new FaultList();
        Assert.DoesNotContain(LayoutFileReader.Read(path, "layout.toml", scenario, faults).Awake, a => !a.Value.IsNone);
        Assert.Empty(faults.Faults);

        File.WriteAllText(path, "format = 1\n[choices]\ncollector = \"flat-plate-2m2\"\nheatre = \"none\"\n");
        LayoutFileReader.Read(path, "layout.toml", scenario, faults);
        Assert.Contains(faults.Faults, f => f.Expected.Contains("'tank'", StringComparison.Ordinal));
        Assert.Contains(faults.Faults, f => f.Value == "heatre" && f.Line == 4);

        File.WriteAllText(path, "format = 1\nchoises = 3\n[choices]\n");
        faults = new();
        LayoutFileReader.Read(path, "layout.toml", scenario, faults);
        Assert.Contains(faults.Faults, f => f.Value == "choises" && f.Line == 2);
    }

    [Theory]
    [InlineData(2, 4, 4, 5, 5)]
    [InlineData(8, 10, 10, 11, 11)]
    [InlineData(-5, 0, 0, 0, 0)]
    public void A_thermostat_that_is_left_out_stands_above_the_limit(double limitC, double heater, double bench, double release, double heap)
    {
        var ground = new ChoiceGround(46, limitC);
        double Standard(string key) => SystemList.All.Choices.All.Single(c => c.Key == key).Silent(ground).Number;
        Assert.Equal([heater, bench, release, heap], new[] { "heater_set_c", "bench_set_c", "release_set_c", "compost_set_c" }.Select(Standard));

        using var small = new SmallScenario(("heater_set_c = 4\n", ""), ("frost_limit_c = 2", FormattableString.Invariant($"frost_limit_c = {limitC}")));
        var levels = small.Read().Choices.Single(c => c.Choice.Key == "heater_set_c").Levels.Select(l => l.Number);
        Assert.Equal(limitC == -5 ? [0] : [heater, heater + 1], levels);
    }

    [Fact]
    public void A_choice_that_sleeps_changes_nothing()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var awake = SmallScenario.Of(scenario, ("heater", "fan-heater-1kw"), ("heater_set_c", 4));
        var twin = awake.With(scenario, "tilt_deg", 75).With(scenario, "barrel_count", 6);
        Assert.Equal(LayoutFile.Write(awake, ""), LayoutFile.Write(twin, ""));
        Assert.Equal(awake, twin);
        Assert.Equal(awake.GetHashCode(), twin.GetHashCode());
        Assert.NotEqual(awake, awake.With(scenario, "heater_set_c", 5));
    }
}
