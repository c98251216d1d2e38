using System.Globalization;
using System.Xml.Linq;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Small;
using DesignSearch.Reporting.Drawings;
using DesignSearch.Runs.Folder;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>Pictures of random plants, half of them south of the equator: nothing covers anything, and what is drawn is as long as it is bought.</summary>
public sealed class PlantPictureTests
{
    private static IReadOnlyList<(int Seed, BuiltLayout Built, JudgedLayout Layout)> Plants => DrawnPlants.All;

    [Fact]
    public void There_are_plants_of_every_kind()
    {
        Assert.True(Plants.Count > 300, $"{Plants.Count} plants");
        Assert.All(Enum.GetValues<Parts.Solar.Founding>(), f => Assert.True(Plants.Any(p => p.Layout.Frame?.Founding == f), $"{f}"));
        Assert.All(Enum.GetValues<Parts.Solar.TurningAxis>(), a => Assert.True(Plants.Any(p => p.Layout.Frame?.Axis == a), $"{a}"));
        Assert.True(Plants.Any(p => p.Built.Supply is { Battery: not null }), "none without mains");
        Assert.All(Enum.GetValues<BodyShape>(), s => Assert.True(Plants.Any(p => p.Layout.Site!.Bodies.Any(b => b.Shape == s)), $"{s}"));
    }

    [Fact]
    public void Every_picture_is_sound_and_no_two_words_stand_on_each_other()
    {
        foreach (var (seed, _, layout) in Plants)
        {
            foreach (var picture in PictureSet.Of(layout))
            {
                var file = XDocument.Parse(picture.AsFile("a plant <&>"));
                Assert.Equal(picture.Title + ": a plant <&>", Named(file.Root!, "title").Single().Value);
                Assert.All(picture.Says, s => Assert.Contains(s, Named(file.Root!, "desc").Single().Value, StringComparison.Ordinal));
                Assert.True(RunOutputs.IsResult("lists/" + PictureSet.NameOf(layout, picture)), picture.Name);
                var words = Named(file.Root!, "text").Where(t => (string?)t.Attribute("class") is "label" or "words")
                    .Select(t => new SheetLabel(t.Value, Figure(t, "x"), Figure(t, "y"), (string?)t.Attribute("class") == "words")).ToList();
                for (var i = 0; i < words.Count; i++)
                {
                    Assert.True(words[i].Left >= 0 && words[i].Top >= 0 && words[i].Left + words[i].Width <= picture.Width && words[i].Bottom <= picture.Height, $"seed {seed}: '{words[i].Text}' leaves the {picture.Name}");
                    for (var j = i + 1; j < words.Count; j++)
                        Assert.False(words[i].Meets(words[j]), $"seed {seed}, {picture.Name}: '{words[i].Text}' stands on '{words[j].Text}'");
                }
            }
        }
    }

    [Fact]
    public void Every_component_and_joint_is_in_a_picture_and_in_its_words()
    {
        foreach (var (seed, _, layout) in Plants)
        {
            var pictures = PictureSet.Of(layout);
            var says = string.Join('\n', pictures.SelectMany(p => p.Says));
            var table = string.Join('\n', pictures.Select(p => p.Table.Text));
            foreach (var joint in layout.Scheme.Joints)
            {
                Assert.True(says.Contains($"{joint.From} to {joint.To}", StringComparison.Ordinal), $"seed {seed}: {joint}");
                Assert.True(table.Contains(Html.Markup.Of($"{joint.From}").Text, StringComparison.Ordinal), $"seed {seed}: {joint}");
            }

            foreach (var body in layout.Site!.Bodies)
                Assert.True(says.Contains(body.Name, StringComparison.Ordinal) && table.Contains(body.Name, StringComparison.Ordinal), $"seed {seed}: {body}");
        }
    }

    [Fact]
    public void Ways_on_the_plan_are_as_long_as_they_are_bought_and_drawn_to_the_pixel()
    {
        var (whole, broken) = (0, 0);
        foreach (var (seed, built, layout) in Plants)
        {
            var plan = SitePlanSheet.Of(layout)!;
            foreach (var run in plan.Runs.Where(r => r.Points.Count > 1))
            {
                Assert.Equal(run.IsBroken, run.LengthM > SitePlanSheet.LongestM);
                Assert.True(run.IsBroken || Math.Abs(Length(run.Points) - run.LengthM) < 1e-6, $"seed {seed}: {run.From} to {run.To} is {Length(run.Points)} m long, not {run.LengthM}");
                (whole, broken) = (whole + (run.IsBroken ? 0 : 1), broken + (run.IsBroken ? 1 : 0));
            }

            var drawing = XDocument.Parse(PlanPicture.Of(layout)!.AsFile("")).Root!;
            var lines = Named(drawing, "polyline").ToList();
            var bar = lines.First(l => (string?)l.Attribute("class") == "bar" && Points(l) is [var a, var b] && a.Y == b.Y);
            var metres = double.Parse(Named(drawing, "text").First(t => Math.Abs(Figure(t, "y") - 4 - Points(bar)[0].Y) < 0.01).Value.Split(' ')[0], CultureInfo.InvariantCulture);
            var scale = Length(Points(bar)) / metres;
            var ways = lines.Where(l => (string?)l.Attribute("class") is "water" or "signal").Select(l => Length(Points(l))).ToList();
            var told = plan.Runs.Where(r => r.Points.Count > 1).ToList();
            Assert.Equal(told.Count, ways.Count);
            for (var i = 0; i < told.Count; i++)
                Assert.True(told[i].IsBroken || Math.Abs(ways[i] - (told[i].LengthM * scale)) < 1, $"seed {seed}: {told[i].From} to {told[i].To} is {ways[i]} long at {scale} to the metre");

            // What the plan says of pipes and cables is what the bill has, 5 % for cuts apart.
            foreach (var cable in layout.Wires.Where(w => w.CableM > 0).GroupBy(w => w.Cable))
            {
                var bought = (double)layout.Bill.Where(l => l.Name == cable.Key).Sum(l => l.Quantity);
                var drawn = 1.05 * cable.Sum(w => w.CableM * w.Count);
                Assert.True(bought > drawn - (0.06 * cable.Count() * 1.05) - 0.06 && bought < drawn + (0.2 * cable.Count()), $"seed {seed}: {cable.Key} {bought} m bought, {drawn} m drawn");
            }

            if (plan.Runs.FirstOrDefault(r => r.From == "tank" && r.IsWater && r.Points.Count > 1) is { } pipe)
                Assert.Equal(2 * 1.05 * pipe.LengthM, (double)built.Parts.Where(p => p.Part is Pipe && p.Purpose.System == "pipe run").Sum(p => p.Quantity), 0.21);
            foreach (var wire in layout.Wires.Where(w => w.CableM > 0 && !(w.EndsAtDevice && w.Volts == 0)))
                Assert.True(plan.Runs.Any(r => r.What.Any(w => w.Contains(wire.Tag + ",", StringComparison.Ordinal))), $"seed {seed}: {wire.Tag} {wire.Device} is not on the plan");
        }

        Assert.True(whole > 300 && broken > 100, $"{whole} whole, {broken} broken");
    }

    [Fact]
    public void Nothing_on_the_plan_stands_in_another_thing_or_across_a_way()
    {
        foreach (var (seed, _, layout) in Plants)
        {
            var plan = SitePlanSheet.Of(layout)!;
            var solid = plan.Bodies.Where(b => b.Body.Shape is BodyShape.Square or BodyShape.Round or BodyShape.Frame).ToList();
            for (var i = 0; i < solid.Count; i++)
            {
                for (var j = i + 1; j < solid.Count; j++)
                    Assert.True(Apart(solid[i].Corners, solid[j].Corners), $"seed {seed}: {solid[i].Body.Name} stands in {solid[j].Body.Name}");
                foreach (var run in plan.Runs.Where(r => r.Points.Count > 1))
                {
                    foreach (var (a, b) in run.Points.Zip(run.Points.Skip(1)))
                        Assert.True(Apart(solid[i].Corners, [a, b]), $"seed {seed}: {run.From} to {run.To} goes through {solid[i].Body.Name}");
                }

                if (solid[i].Body.Shape == BodyShape.Frame)
                    Assert.True(Apart(solid[i].Corners, plan.House), $"seed {seed}: the collectors stand in the house");
            }

            // The sun comes to the collectors before it comes to the house: what they face is not the wall.
            if (layout.Frame is { } frame && plan.Bodies.FirstOrDefault(b => b.Body.Shape == BodyShape.Frame) is { } first)
            {
                var (sin, cos) = Math.SinCos(frame.AzimuthDeg * Math.PI / 180);
                var ahead = Enumerable.Range(0, 60).Select(k => (X: first.Middle.X + (sin * k * 0.25), Y: first.Middle.Y + (cos * k * 0.25)));
                Assert.All(ahead, p => Assert.True(Apart([p, (p.X + 0.01, p.Y)], plan.House), $"seed {seed}: the house stands before the collectors"));
            }
        }
    }

    [Fact]
    public void What_is_cut_and_cast_is_the_geometry_and_the_bill()
    {
        foreach (var (seed, built, layout) in Plants.Where(p => p.Layout.Frame is not null))
        {
            var frame = layout.Frame!;
            Assert.Equal(frame.Pieces.Sum(p => p.LengthM) * frame.Frames, frame.CutList.Sum(c => c.Count * c.LengthM), 0.0051 * frame.Pieces.Count * frame.Frames);
            Assert.Equal(frame.Pieces.Count * frame.Frames, frame.CutList.Sum(c => c.Count));
            Assert.True(frame.Pieces.Count > 4, $"seed {seed}");
            var bought = built.Parts.Where(p => p.Part is SmallPart { Role: SmallPartRole.Cement }).Sum(p => (double)p.Quantity);
            var cast = frame.Blocks.Sum(b => b.VolumeM3) * frame.Frames;
            Assert.True(bought >= cast - 1e-9 && bought < cast + 0.11, $"seed {seed}: {cast} m³ drawn, {bought} m³ bought");
            // Every piece that meets the plate ends on it, and none reaches below ground but a post.
            var below = frame.Pieces.Where(p => Math.Min(p.From.Z, p.To.Z) < -1e-9).ToList();
            Assert.True(below.Count == (frame.Founding == Parts.Solar.Founding.Post && frame.DepthM > 0.1 ? 1 : 0), $"seed {seed}");
            Assert.All(frame.Pieces, p => Assert.True(p.From.Z >= -frame.DepthM && p.To.Z <= frame.ClearanceM + frame.RiseM + 1e-9, $"seed {seed}: {p}"));
            Assert.Equal(frame.ReachM * frame.ReachM + (frame.RiseM * frame.RiseM), frame.ChordM * frame.ChordM, 1e-9);
        }
    }

    /// <summary>By hand: chord 2 m at 60°, so 1.000 m deep and 1.732 m high; feet 1.2 m apart stand 0.1 m before and behind the plate.</summary>
    [Fact]
    public void A_stand_by_hand()
    {
        var stand = new StandPlan
        {
            MountId = "m",
            MountIsByArea = true,
            HeldBy = [],
            Frames = 2,
            Collectors = 2,
            Founding = Parts.Solar.Founding.Feet,
            Axis = Parts.Solar.TurningAxis.None,
            LimitDeg = 0,
            WidthM = 2,
            ChordM = 2,
            TiltDeg = 60,
            AzimuthDeg = 180,
            ClearanceM = 0.5,
            FeetApartM = 1.2,
            AnchorsEach = 4,
            DepthM = 0.8,
            BaseM = 1.5,
            ConcreteM3 = 0.32,
            BallastKg = 0,
        };
        (string, int, double)[] expected =
        [
            ("brace across the back", 4, Math.Round(Math.Sqrt((1.6 * 1.6) + (2.232 * 2.232) + 0.01), 2)), ("back leg", 4, 2.23), ("rail across the frame", 4, 2), ("rail under the collectors, up the slope", 4, 2),
            ("brace from back foot to the middle of the rail", 4, Math.Round(Math.Sqrt((0.6 * 0.6) + (1.366 * 1.366)), 2)), ("beam from front foot to back foot", 4, 1.2), ("front leg", 4, 0.51),
        ];
        Assert.Equal(expected, stand.CutList.Select(c => (c.Name, c.Count, c.LengthM)));
        Assert.Equal(4, stand.Blocks.Count);
        Assert.All(stand.Blocks, b => Assert.Equal(Math.Sqrt(0.1), b.SideM, 9));
        var post = stand with { Founding = Parts.Solar.Founding.Post, Axis = Parts.Solar.TurningAxis.Vertical, BaseM = 0.9, FeetApartM = 0, ConcreteM3 = 0.648 };
        // Up to the middle of the plate, and down to a hand above the foot of the block.
        Assert.Equal(0.5 + 0.866 + 0.7, post.Pieces[0].LengthM, 3);
        Assert.Equal(0.8, Assert.Single(post.Blocks).DepthM, 9);
    }

    [Fact]
    public void The_collectors_stand_as_much_above_the_water_as_the_site_says()
    {
        foreach (var (_, _, layout) in Plants.Where(p => p.Layout.Frame is not null))
        {
            var drawing = new ElevationSheet(layout, layout.Site!, SitePlanSheet.Of(layout)!);
            var (low, high, _, _) = drawing.Measures.Single(m => m.What == "lower edge of the collectors above the tank's water");
            Assert.Equal(layout.Site!.CollectorAboveTankM, high.Y - low.Y, 9);
            Assert.Equal(layout.Site.Bodies.First(b => b.Shape == BodyShape.Square).HeightM, low.Y, 9);
            var pipe = drawing.Lines.First(l => l.Kind == "water").Points;
            if (!drawing.Notes.Contains(Words.PictureWords.PipeTooShort) && Length(SitePlanSheet.Of(layout)!.Runs[0].Points) is var run)
                Assert.Equal(run, Length(pipe), 6);
            else
                Assert.True(Length(SitePlanSheet.Of(layout)!.Runs[0].Points) <= Math.Abs(layout.Site.CollectorAboveTankM) + 1e-9);
        }
    }

    private static IEnumerable<XElement> Named(XElement root, string name) => root.Descendants().Where(e => e.Name.LocalName == name);

    private static double Figure(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static List<(double X, double Y)> Points(XElement line) =>
        [.. line.Attribute("points")!.Value.Split(' ').Select(p => p.Split(',')).Select(p => (double.Parse(p[0], CultureInfo.InvariantCulture), double.Parse(p[1], CultureInfo.InvariantCulture)))];

    private static double Length(IReadOnlyList<(double X, double Y)> points) =>
        points.Zip(points.Skip(1), (a, b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)))).Sum();

    // Two convex figures, of which one may be a line, that share no more than an edge: some side of one has the other wholly beyond it.
    private static bool Apart(IReadOnlyList<(double X, double Y)> one, IReadOnlyList<(double X, double Y)> other)
    {
        foreach (var figure in new[] { one, other })
        {
            for (var i = 0; i < figure.Count; i++)
            {
                var (a, b) = (figure[i], figure[(i + 1) % figure.Count]);
                var (nx, ny) = (b.Y - a.Y, a.X - b.X);
                var length = Math.Sqrt((nx * nx) + (ny * ny));
                var (first, second) = (one.Select(p => ((p.X * nx) + (p.Y * ny)) / length).ToList(), other.Select(p => ((p.X * nx) + (p.Y * ny)) / length).ToList());
                if (first.Max() <= second.Min() + 1e-6 || second.Max() <= first.Min() + 1e-6)
                    return true;
            }
        }

        return false;
    }
}
