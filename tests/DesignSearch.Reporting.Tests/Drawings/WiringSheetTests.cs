using System.Globalization;
using System.Xml.Linq;
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
                // An end switch ends at its motor; a cut-out stands in the pump's line, but its cable comes back to the box.
                Assert.True(!wire.Device.StartsWith("Tank cut-out", StringComparison.Ordinal) || wire.Ends.All(e => e.Terminal.Length > 0), $"seed {seed}: {wire}");
            }

            var drawn = WiringSheet.Of(layout);
            var sides = drawn.Sheets.Select(s => new Side(s)).ToList();
            var words = sides.SelectMany(s => s.Words).ToList();
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
            Assert.Equal(layout.Wires.Count, drawn.Told.Count + sides.Sum(s => s.Boxes.Count(b => b.Width == WiringSheet.DeviceWidth)));
        }

        Assert.True(cores > 1000, $"{cores} cores");
    }

    [Fact]
    public void No_wire_crosses_another_or_goes_through_a_box()
    {
        foreach (var (seed, _, layout) in DrawnPlants.All)
        {
            foreach (var sheet in WiringSheet.Of(layout).Sheets)
            {
                Assert.True(sheet.Height < 1100, $"seed {seed}: a side of {sheet.Height}");
                var side = new Side(sheet);
                foreach (var (a, b) in side.Wires)
                    Assert.True(a.X == b.X || a.Y == b.Y, $"seed {seed}: a wire is askew");
                foreach (var (a, b) in side.Wires.Where(p => p.From.Y == p.To.Y))
                {
                    foreach (var (c, d) in side.Wires.Where(p => p.From.X == p.To.X))
                    {
                        var crosses = c.X > Math.Min(a.X, b.X) + 0.01 && c.X < Math.Max(a.X, b.X) - 0.01 && a.Y > Math.Min(c.Y, d.Y) + 0.01 && a.Y < Math.Max(c.Y, d.Y) - 0.01;
                        Assert.False(crosses && !side.Dots.Contains((c.X, a.Y)), $"seed {seed}: wires cross at {c.X}, {a.Y}");
                    }

                    foreach (var box in side.Boxes)
                    {
                        var under = Math.Max(a.X, b.X) > box.X + 0.01 && Math.Min(a.X, b.X) < box.X + box.Width - 0.01 && a.Y > box.Y + 0.01 && a.Y < box.Y + box.Height - 0.01;
                        Assert.False(under, $"seed {seed}: a wire at {a.Y} goes through a box at {box.X}, {box.Y}");
                    }
                }

                for (var i = 0; i < side.Boxes.Count; i++)
                {
                    for (var j = i + 1; j < side.Boxes.Count; j++)
                        Assert.True(Apart(side.Boxes[i], side.Boxes[j]), $"seed {seed}: boxes on each other");
                }
            }
        }
    }

    /// <summary>Panels on a battery without the controller between them would boil it: nothing joins the two in the picture.</summary>
    [Fact]
    public void Panels_and_battery_hang_on_no_common_rail()
    {
        var seen = 0;
        foreach (var (seed, _, layout) in DrawnPlants.All.Where(p => p.Built.Supply is { Battery: not null }))
        {
            var first = new Side(WiringSheet.Of(layout).Sheets[0]);
            var frame = first.Frames[0];
            Assert.Contains(Words.PictureWords.SourceTitle, first.Words);
            Assert.DoesNotContain(first.Dots, d => d.Y > frame.Y && d.Y < frame.Y + frame.Height);
            Assert.DoesNotContain(first.Wires, w => w.From.X == w.To.X && w.From.Y > frame.Y && w.From.Y < frame.Y + frame.Height);
            seen += layout.Wires.Count(w => w is { EndsAtDevice: true, Volts: > 0 }) == 2 ? 1 : 0;
            Assert.True(seen > 0, $"seed {seed}: no row for panels and battery");
        }

        Assert.True(seen > 10, $"{seen} plants without mains");
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

    private static bool Apart((double X, double Y, double Width, double Height) a, (double X, double Y, double Width, double Height) b) =>
        a.X + a.Width <= b.X || b.X + b.Width <= a.X || a.Y + a.Height <= b.Y || b.Y + b.Height <= a.Y;

    // A side read back from what was drawn.
    private sealed class Side
    {
        public Side(Sheet sheet)
        {
            var all = XDocument.Parse("<svg>" + sheet.Body + "</svg>").Root!.Elements().ToList();
            Words = [.. all.Where(e => e.Name == "text").Select(e => e.Value)];
            Wires = [.. all.Where(e => (string?)e.Attribute("class") == "wire").Select(Points).SelectMany(p => p.Zip(p.Skip(1)))];
            Boxes = Squares(all, "box");
            Frames = Squares(all, "group");
            Dots = [.. all.Where(e => e.Name == "circle" && (string?)e.Attribute("class") == "full").Select(e => (Figure(e.Attribute("cx")!.Value), Figure(e.Attribute("cy")!.Value)))];
        }

        public IReadOnlyList<string> Words { get; }

        public IReadOnlyList<((double X, double Y) From, (double X, double Y) To)> Wires { get; }

        public List<(double X, double Y, double Width, double Height)> Boxes { get; }

        public List<(double X, double Y, double Width, double Height)> Frames { get; }

        public HashSet<(double X, double Y)> Dots { get; }

        private static List<(double X, double Y, double Width, double Height)> Squares(IEnumerable<XElement> all, string kind) =>
            [.. all.Where(e => (string?)e.Attribute("class") == kind).Select(Points).Select(p => (p[0].X, p[0].Y, p[2].X - p[0].X, p[2].Y - p[0].Y))];

        private static List<(double X, double Y)> Points(XElement line) =>
            [.. line.Attribute("points")!.Value.Split(' ').Select(p => p.Split(',')).Select(p => (Figure(p[0]), Figure(p[1])))];

        private static double Figure(string text) => double.Parse(text, CultureInfo.InvariantCulture);
    }
}
