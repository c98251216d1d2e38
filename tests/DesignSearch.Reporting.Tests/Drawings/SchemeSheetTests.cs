using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Reporting.Drawings;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>No two lines of a sheet lie on each other and none passes under a box: a crossing is only ever square, and joins nothing.</summary>
public sealed class SchemeSheetTests
{
    private const int Draws = 200;

    [Fact]
    public void Lines_only_ever_cross_squarely_and_pass_under_no_box()
    {
        var wide = ScenarioReader.Read(Repository.At("runs", "frost-hollow"));
        var lines = 0;
        for (var seed = 0; seed < Draws; seed++)
        {
            var random = new Random(seed);
            var layout = Layout.Of([.. wide.Systems.Choices.All.Select((_, i) => wide.Choices[i].Levels[random.Next(wide.Choices[i].Levels.Count)])], wide.Systems.Choices);
            var scheme = SchemeDrawing.Of(LayoutBuilder.Build(wide, layout));
            foreach (var sheet in new[] { SchemeSheet.Of(scheme, Medium.Water, Medium.Air), SchemeSheet.Of(scheme, Medium.Current, Medium.Signal, Medium.Shaft) })
            {
                Sound(sheet, seed);
                lines += sheet.Lines.Count;
            }
        }

        Assert.InRange(lines, 10 * Draws, 100 * Draws);
    }

    [Fact]
    public void A_ring_and_a_way_past_a_column_are_drawn_as_well()
    {
        var sheet = SchemeSheet.Of(new(
            [.. "abcd".Select(c => new Component(c.ToString(), "", Symbol.Plain, Spot.House, "", 1, [], []))],
            [.. new[] { "ab", "bc", "ca", "ac", "ad", "dd", "ab" }.Select(p => new Joint(Medium.Water, p[..1], "out", p[1..], "in", [], 0))]), Medium.Water);
        Sound(sheet, 0);
        Assert.Equal(4, sheet.Boxes.Count);
        Assert.Equal(["solar controller", "with sensors at", "collector"], SchemeSheet.NameLines("solar controller with sensors at collector"));
        Assert.Equal([1, 2, 3, 4, 5, 6, 7], sheet.Lines.Select(l => l.Number));
    }

    private static void Sound(SchemeSheet sheet, int seed)
    {
        var pieces = sheet.Lines.SelectMany(l => l.Points.Zip(l.Points.Skip(1), (a, b) => (l.Number, A: a, B: b))).ToList();
        Assert.All(pieces, p => Assert.True(p.A.X == p.B.X || p.A.Y == p.B.Y, $"seed {seed}: line {p.Number} is askew"));
        Assert.All(pieces, p => Assert.True(Math.Min(p.A.X, p.B.X) >= 0 && Math.Max(p.A.X, p.B.X) <= sheet.Width && Math.Min(p.A.Y, p.B.Y) >= 0 && Math.Max(p.A.Y, p.B.Y) <= sheet.Height, $"seed {seed}: line {p.Number} leaves the sheet"));
        for (var i = 0; i < pieces.Count; i++)
        {
            for (var j = i + 1; j < pieces.Count; j++)
                Assert.True(pieces[i].Number == pieces[j].Number || !LieOnEachOther(pieces[i], pieces[j]), $"seed {seed}: lines {pieces[i].Number} and {pieces[j].Number} lie on each other");
            foreach (var box in sheet.Boxes)
            {
                var (left, right, top, bottom) = (Math.Min(pieces[i].A.X, pieces[i].B.X), Math.Max(pieces[i].A.X, pieces[i].B.X), Math.Min(pieces[i].A.Y, pieces[i].B.Y), Math.Max(pieces[i].A.Y, pieces[i].B.Y));
                var under = left < box.X + SchemeSheet.BoxWidth && right > box.X && top < box.Y + box.Height && bottom > box.Y;
                Assert.True(!under, $"seed {seed}: line {pieces[i].Number} passes under {box.Name}");
            }
        }

        Assert.All(sheet.Boxes, b => Assert.True(b.Height > SchemeSheet.UnderSign + (SchemeSheet.LineHeight * (SchemeSheet.NameLines(b.Name).Count - 1)), $"seed {seed}: {b.Name} runs out of its box"));
        for (var i = 0; i < sheet.Boxes.Count; i++)
        {
            for (var j = i + 1; j < sheet.Boxes.Count; j++)
            {
                var (a, b) = (sheet.Boxes[i], sheet.Boxes[j]);
                Assert.True(a.X + SchemeSheet.BoxWidth <= b.X || b.X + SchemeSheet.BoxWidth <= a.X || a.Y + a.Height <= b.Y || b.Y + b.Height <= a.Y, $"seed {seed}: {a.Name} lies on {b.Name}");
            }
        }
    }

    // On the same level or upright, and sharing more than a point.
    private static bool LieOnEachOther((int Number, (int X, int Y) A, (int X, int Y) B) one, (int Number, (int X, int Y) A, (int X, int Y) B) other)
    {
        bool Share(int a, int b, int c, int d) => Math.Min(Math.Max(a, b), Math.Max(c, d)) > Math.Max(Math.Min(a, b), Math.Min(c, d));
        return (one.A.Y == one.B.Y && other.A.Y == other.B.Y && one.A.Y == other.A.Y && Share(one.A.X, one.B.X, other.A.X, other.B.X))
            || (one.A.X == one.B.X && other.A.X == other.B.X && one.A.X == other.A.X && Share(one.A.Y, one.B.Y, other.A.Y, other.B.Y));
    }
}
