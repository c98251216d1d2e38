using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Small;
using DesignSearch.Reporting.Drawings;
using DesignSearch.Reporting.Tables;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>Core by core: table, file and picture have the same numbers, and no line of the picture crosses another or goes through a box.</summary>
public sealed class WiringSheetTests
{
    [Fact]
    public void Picture_table_and_file_have_the_same_numbers()
    {
        var cores = 0;
        foreach (var (seed, built, layout) in DrawnPlants.All.Where(p => p.Layout.Wires.Count > 0))
        {
            var ends = layout.Wires.SelectMany(w => w.Ends).Where(e => e.Terminal.Length > 0).ToList();
            Assert.Equal(ends.Count, ends.DistinctBy(e => e.Terminal).Count());
            var strips = built.Parts.Where(p => p.Part is SmallPart { Role: SmallPartRole.Terminals }).Sum(p => (double)p.Quantity);
            Assert.True(ends.Count(e => e.Terminal.StartsWith("X1", StringComparison.Ordinal)) <= 10 * strips, $"seed {seed}: {strips} strips of ten");
            foreach (var wire in layout.Wires)
            {
                Assert.True(wire.CableM <= 0 || wire.Ends.Count == wire.Count * Math.Max(wire.Cores, 2) || wire.Cable.StartsWith("none", StringComparison.Ordinal), $"seed {seed}: {wire}");
                Assert.True((wire.Ends.Count > 0) == (wire.Tag.Length > 0), $"seed {seed}: {wire}");
            }

            var sheet = WiringSheet.Of(layout);
            var words = sheet.Sheets.SelectMany(s => s.Labels).Select(l => l.Text).ToList();
            var file = CsvRows.Of(WiringTable.Of(layout));
            foreach (var wire in layout.Wires.Where(w => w.Ends.Count > 0))
            {
                Assert.True(words.Exists(w => w.StartsWith(wire.Tag + ":", StringComparison.Ordinal)), $"seed {seed}: {wire.Tag} is not drawn");
                foreach (var end in wire.Ends.Where(e => e.Cable == 1))
                {
                    cores++;
                    Assert.True(words.Contains($"{end.Core}  {end.Carries}"), $"seed {seed}: {end}");
                    Assert.True(end.Terminal.Length == 0 || words.Contains(end.Terminal), $"seed {seed}: {end}");
                    Assert.Contains($"{end.Core} = {end.Carries}" + (end.Terminal.Length > 0 ? " at " + end.Terminal : ""), file.Single(r => r["cable_no"] == wire.Tag)["core_terminals"], StringComparison.Ordinal);
                }
            }

            // Each row is drawn with a box of its own, or told because it sits in the box beside others.
            Assert.Equal(layout.Wires.Count, sheet.Told.Count + sheet.Boxes.Count(b => b.Width == WiringSheet.DeviceWidth));
        }

        Assert.True(cores > 1000, $"{cores} cores");
    }

    [Fact]
    public void No_wire_crosses_another_or_goes_through_a_box()
    {
        foreach (var (seed, _, layout) in DrawnPlants.All)
        {
            var drawn = WiringSheet.Of(layout);
            for (var page = 0; page < drawn.Sheets.Count; page++)
            {
                var sheet = drawn.Sheets[page];
                Assert.True(sheet.Height < 1100, $"seed {seed}: a side of {sheet.Height}");
                var pieces = sheet.Lines.Where(l => l.Kind == "wire").SelectMany(l => l.Points.Zip(l.Points.Skip(1))).ToList();
                foreach (var (a, b) in pieces)
                    Assert.True(a.X == b.X || a.Y == b.Y, $"seed {seed}: a wire is askew");
                foreach (var (a, b) in pieces.Where(p => p.First.Y == p.Second.Y))
                {
                    foreach (var (c, d) in pieces.Where(p => p.First.X == p.Second.X))
                    {
                        var crosses = c.X > Math.Min(a.X, b.X) + 0.01 && c.X < Math.Max(a.X, b.X) - 0.01 && a.Y > Math.Min(c.Y, d.Y) + 0.01 && a.Y < Math.Max(c.Y, d.Y) - 0.01;
                        Assert.False(crosses, $"seed {seed}: wires cross at {c.X}, {a.Y}");
                    }

                    foreach (var box in drawn.Boxes.Where(x => x.Sheet == page + 1))
                    {
                        var under = Math.Max(a.X, b.X) > box.X + 0.01 && Math.Min(a.X, b.X) < box.X + box.Width - 0.01 && a.Y > box.Y + 0.01 && a.Y < box.Y + box.Height - 0.01;
                        Assert.False(under, $"seed {seed}: a wire at {a.Y} goes through a box at {box.X}, {box.Y}");
                    }
                }

                var boxes = drawn.Boxes.Where(x => x.Sheet == page + 1).ToList();
                for (var i = 0; i < boxes.Count; i++)
                {
                    for (var j = i + 1; j < boxes.Count; j++)
                        Assert.True(boxes[i].X + boxes[i].Width <= boxes[j].X || boxes[j].X + boxes[j].Width <= boxes[i].X || boxes[i].Y + boxes[i].Height <= boxes[j].Y || boxes[j].Y + boxes[j].Height <= boxes[i].Y, $"seed {seed}: boxes on each other");
                }
            }
        }
    }

    [Fact]
    public void A_cables_cores_are_numbered_in_the_order_of_what_they_carry()
    {
        Assert.Equal(["L", "N", "PE"], CoreNumbers.Carried(new("heater", 230, 1000, 3, "", "") { Cores = 3 }));
        Assert.Equal(["motor a", "motor b"], CoreNumbers.Carried(new("drive", 24, 60, 3, "", "") { Reverses = true }));
        Assert.Equal(["+", "0 V", "signal"], CoreNumbers.Carried(new("light", 24, 1, 3, "", "") { Cores = 3, IsControl = true }));
        Assert.Equal(["L in", "L out", "PE"], CoreNumbers.Carried(new("thermostat", 230, 0, 3, "", "") { Cores = 3, IsControl = true }));
        Assert.Equal(["a", "b"], CoreNumbers.Carried(new("probe", 0, 0, 3, "", "")));
    }
}
