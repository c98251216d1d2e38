using DesignSearch.Files;
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
        var back = LayoutFile.Read(path, "layout.toml", scenario.Catalogue, 46, faults);
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
        Assert.DoesNotContain(LayoutFile.Read(path, "layout.toml", scenario.Catalogue, 46, faults).Awake, a => !a.Value.IsNone);
        Assert.Empty(faults.Faults);

        File.WriteAllText(path, "format = 1\n[choices]\ncollector = \"flat-plate-2m2\"\nheatre = \"none\"\n");
        LayoutFile.Read(path, "layout.toml", scenario.Catalogue, 46, faults);
        Assert.Contains(faults.Faults, f => f.Expected.Contains("'tank'", StringComparison.Ordinal));
        Assert.Contains(faults.Faults, f => f.Value == "heatre" && f.Line == 4);
    }

    [Fact]
    public void A_choice_that_sleeps_changes_nothing()
    {
        using var small = new SmallScenario();
        var scenario = small.Read();
        var awake = SmallScenario.Of(scenario, ("heater", "fan-heater-1kw"), ("heater_set_c", 4));
        var twin = awake.With("tilt_deg", ChoiceValue.Of(75), scenario.Catalogue).With("barrel_count", ChoiceValue.Of(6), scenario.Catalogue);
        Assert.Equal(LayoutFile.Write(awake, ""), LayoutFile.Write(twin, ""));
        Assert.Equal(Judge.Slug(awake), Judge.Slug(twin));
    }
}
