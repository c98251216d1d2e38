using System.Text;
using DesignSearch.Files;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Scenarios;
using Xunit;

namespace DesignSearch.Layouts.Tests;

/// <summary>Many layouts read at once: a folder of files, a table with a row each; what is at fault is told at its place.</summary>
public sealed class LayoutListTests : IDisposable
{
    private readonly SmallScenario small = new();
    private readonly Scenario scenario;

    public LayoutListTests() => scenario = small.Read();

    public void Dispose() => small.Dispose();

    [Fact]
    public void A_folder_is_read_by_name_and_an_empty_one_is_told()
    {
        var folder = Directory.CreateDirectory(Path.Combine(small.Folder, "layouts")).FullName;
        var faults = new FaultList();
        Assert.Empty(LayoutListReader.Folder(folder, scenario, faults));
        Assert.Equal([(folder, 0, 0, "", "layout files, named *.toml")], faults.Faults.Select(f => (f.File, f.Line, f.Column, f.Value, f.Expected)));
        foreach (var (name, heater) in new[] { ("b", "none"), ("a", "fan-heater-1kw") })
            File.WriteAllText(Path.Combine(folder, name + ".toml"), $"format = 1\n[choices]\nheater = \"{heater}\"\n");
        File.WriteAllText(Path.Combine(folder, "c.txt"), "no layout");
        faults = new();
        var read = LayoutListReader.Folder(folder, scenario, faults);
        Assert.Empty(faults.Faults);
        Assert.Equal([("a", "fan-heater-1kw"), ("b", "none")], read.Select(n => (n.Name, n.Layout.ValueOf(scenario.Choice("heater")).ToString())));
        Assert.Throws<ArgumentNullException>(() => LayoutListReader.Folder(folder, scenario, null!));
    }

    [Fact]
    public void A_table_has_a_layout_a_row_and_a_cell_that_is_empty_is_silent()
    {
        var (read, faults) = Table("name,heater,heater_set_c,barrel\nwarm,fan-heater-1kw,4.5,none\n,none,,barrel-200-used\n");
        Assert.Empty(faults);
        Assert.Equal(["warm", "2"], read.Select(n => n.Name));
        Assert.Equal(["fan-heater-1kw", "none"], read.Select(n => n.Layout.ValueOf(scenario.Choice("heater")).ToString()));
        Assert.Equal(4.5, read[0].Layout.ValueOf(scenario.Choice("heater_set_c")).Number);
        Assert.Equal(["none", "barrel-200-used"], read.Select(n => n.Layout.ValueOf(scenario.Choice("barrel")).ToString()));
        var file = Path.Combine(small.Folder, "rows.csv");
        File.WriteAllText(file, "name,heater\nwarm,fan-heater-1kw\n");
        var list = new FaultList();
        Assert.Equal(["warm"], LayoutListReader.TableFile(file, scenario, list).Select(n => n.Name));
        Assert.Empty(list.Faults);
    }

    [Theory]
    [InlineData("heater\n", 0, 0, "", "a row for each layout")]
    [InlineData("name,heater\na,fan-heater-9kw\n", 2, 3, "fan-heater-9kw", "the id of a heater in the catalogue or \"none\" for 'heater'")]
    [InlineData("name,barrel_count\na,2.5\n", 2, 3, "2.5", "'barrel_count'")]
    [InlineData("name,heater_set_c,heater\na,31,fan-heater-1kw\n", 2, 3, "31", "'heater_set_c'")]
    [InlineData("name,collector\na,none\nb,flat-plate-2m2\n", 3, 0, "", "a part of kind pump for 'pump', since this layout has a collector")]
    public void A_slip_is_told_at_its_place(string text, int line, int column, string value, string expected)
    {
        var (_, faults) = Table(text);
        Assert.Contains(faults, f => (f.File, f.Line, f.Column, f.Value) == ("rows.csv", line, column, value) && f.Expected.Contains(expected, StringComparison.Ordinal));
        Assert.DoesNotContain(faults, f => value.Length > 0 && f.Value.Length == 0);
    }

    private (IReadOnlyList<NamedLayout> Layouts, IReadOnlyList<InputFault> Faults) Table(string text)
    {
        var faults = new FaultList();
        return (LayoutListReader.Table("rows.csv", Encoding.UTF8.GetBytes(text), scenario, faults), faults.Faults);
    }
}
