using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>
/// Where things might stand, by one simple rule, since a scenario says lengths and not places. Stores stand in rows along the wall
/// that looks away from the sun, tanks first, from the gable that the pipe leaves by; benches along the other wall. From that gable
/// the wall is walked: the boxes hang where the cables of the bill end, the heap's pipes leave where theirs do. What lies outside is as
/// far away as its pipe or cable is long; the collectors lie off the gable and face where they are dialled to.
/// </summary>
internal sealed class SitePlanSheet
{
    /// <summary>What is longer is drawn broken [m].</summary>
    public const double LongestM = 20;

    private const double BrokenM = 8;
    private const double OutM = 1;
    private const double GapM = 0.05;
    private const double BetweenFramesM = 0.6;
    private const double UsualWallM = 3;
    private const double WallThickM = 0.3;

    private readonly SitePlan site;
    private readonly JudgedLayout layout;
    private readonly PlanCables cables;
    private readonly PlanAxes axes;
    private readonly List<PlannedBody> bodies = [];
    private readonly List<PlannedRun> runs = [];
    private double gateB;
    private WallWay walls;

    private SitePlanSheet(JudgedLayout layout, SitePlan site)
    {
        (this.layout, this.site, cables) = (layout, site, new(layout));
        axes = new(site, layout.Frame);
        House = [axes.At(0, 0), axes.At(site.House.LengthM, 0), axes.At(site.House.LengthM, site.House.WidthM), axes.At(0, site.House.WidthM)];
        Ridge = [axes.At(0, site.House.WidthM / 2), axes.At(site.House.LengthM, site.House.WidthM / 2)];
        if (site.House.Section is { BackWallTopM: > 0 })
            LeanOn();
        Stores();
        Tables();
        Buried();
        Collectors();
        Boxes();
        Inside();
    }

    /// <summary>Corners of the house, east and north [m]; the first two on the wall away from the sun.</summary>
    public IReadOnlyList<(double X, double Y)> House { get; }

    /// <summary>Ends of its ridge [m].</summary>
    public IReadOnlyList<(double X, double Y)> Ridge { get; private set; }

    /// <summary>Corners of the wall it leans on, drawn a little longer than the house and of a usual thickness [m]; none without one.</summary>
    public IReadOnlyList<(double X, double Y)> BackWall { get; private set; } = [];

    /// <summary>What stands in it and beside it.</summary>
    public IReadOnlyList<PlannedBody> Bodies => bodies;

    /// <summary>Pipes and cables.</summary>
    public IReadOnlyList<PlannedRun> Runs => runs;

    /// <summary>Where the boxes hang [m]; null without any.</summary>
    public (double X, double Y)? Box { get; private set; }

    /// <summary>Where the dwelling's cable begins [m]; null without one.</summary>
    public (double X, double Y)? Dwelling { get; private set; }

    /// <summary>Circles that turning frames sweep [m].</summary>
    public IReadOnlyList<(double X, double Y, double Radius)> Sweeps { get; private set; } = [];

    /// <summary>Where the collectors face: a step of a metre [m].</summary>
    public (double X, double Y) Facing { get; private set; }

    /// <summary>Whether all stores stand inside as they are arranged.</summary>
    public bool StoresFit { get; private set; } = true;

    /// <summary>The plan of a layout; null where its sizes were not stored.</summary>
    /// <param name="layout">The layout.</param>
    public static SitePlanSheet? Of(JudgedLayout layout) => layout.Site is { } site ? new(layout, site) : null;

    // The ridge lies along the wall, which is on the left hand of one who looks along the ridge.
    private void LeanOn()
    {
        var (inner, outer) = axes.IsRightSunward ? (0, -WallThickM) : (site.House.WidthM, site.House.WidthM + WallThickM);
        Ridge = [axes.At(0, inner), axes.At(site.House.LengthM, inner)];
        BackWall =
        [
            axes.At(-WallThickM, inner), axes.At(site.House.LengthM + WallThickM, inner), axes.At(site.House.LengthM + WallThickM, outer), axes.At(-WallThickM, outer),
        ];
    }

    private void Stores()
    {
        var (a, b, row) = (0.0, 0.0, 0.0);
        var stores = site.Bodies.Where(s => s.Shape is BodyShape.Square or BodyShape.Round && s != cables.Heap)
            .OrderBy(s => s.Shape == BodyShape.Square ? 0 : 1).ToList();
        gateB = stores.Count > 0 ? stores[0].DepthM / 2 : site.House.WidthM / 4;
        foreach (var store in stores)
        {
            for (var i = 0; i < store.Count; i++)
            {
                if (a > 0 && a + store.WidthM > site.House.LengthM)
                    (a, b, row) = (0, b + row + GapM, 0);
                bodies.Add(new(store, axes.Square(a, b, store.WidthM, store.DepthM)));
                StoresFit &= a + store.WidthM <= site.House.LengthM && b + store.DepthM <= site.House.WidthM;
                (a, row) = (a + store.WidthM + GapM, Math.Max(row, store.DepthM));
            }
        }

        gateB = Math.Min(gateB, site.House.WidthM / 2);
        walls = new(site.House.LengthM, site.House.WidthM, gateB);
    }

    private void Tables()
    {
        foreach (var table in site.Bodies.Where(t => t.Shape == BodyShape.Table))
        {
            var a = (site.House.LengthM - table.WidthM) / 2;
            bodies.Add(new(table, axes.Square(a, site.House.WidthM - table.DepthM, table.WidthM, table.DepthM)));
        }
    }

    // Along the long side of the floor, as the field is reckoned.
    private void Buried()
    {
        foreach (var field in site.Bodies.Where(f => f.Shape == BodyShape.Buried))
        {
            var (length, width) = (site.House.LengthM, site.House.WidthM);
            for (var i = 0; i < field.Count; i++)
            {
                var (across, along) = (field.WidthM / field.Count * (i + 0.5), field.DepthM);
                bodies.Add(new(
                    field,
                    length >= width
                        ? [axes.At((length - along) / 2, across), axes.At((length + along) / 2, across)]
                        : [axes.At(across, (width - along) / 2), axes.At(across, (width + along) / 2)]));
            }
        }
    }

    private void Collectors()
    {
        if (layout.Frame is not { } frame || site.Bodies.FirstOrDefault(f => f.Shape == BodyShape.Frame) is not { } body)
            return;
        var pipe = layout.Scheme.Joints.First(j => j.Medium == Medium.Water && (j.From == body.Name || j.To == body.Name) && j.LengthM > 0);
        var faces = PlanAxes.Towards(frame.AzimuthDeg);
        var (outwards, sunwards) = axes.Of(faces);
        var drawn = Drawn(pipe.LengthM);
        var first = outwards > sunwards ? drawn : Math.Min(drawn, OutM);
        var (gate, knee) = ((0.0, gateB), (-first, gateB));
        var end = (A: -first, B: gateB + drawn - first);
        Facing = faces;
        Frames(body, frame, (-outwards, sunwards), end);
        List<(double A, double B)> way = first < drawn ? [gate, knee, end] : [gate, end];
        var inside = cables.ToCollector.Count > 0 ? cables.ToCollector.Max(w => w.CableM) - pipe.LengthM : UsualWallM;
        runs.Add(new(
            "tank",
            body.Name,
            [PictureWords.Pipes, .. cables.ToCollector.Select(w => PictureWords.CableBeside(w))],
            true,
            pipe.LengthM,
            [.. way.Select(p => axes.At(p.A, p.B))],
            drawn < pipe.LengthM));
        if (cables.ToCollector.Count > 0)
            Walk("boxes", "tank", [.. cables.ToCollector.Select(w => PictureWords.CableBeside(w))], 0, inside);
    }

    // All frames beyond the end of the pipe, touching it where they come nearest to the house.
    private void Frames(Body body, StandPlan frame, (double A, double B) faces, (double A, double B) end)
    {
        var side = (A: faces.B, B: -faces.A);
        var pitch = Math.Max(body.WidthM + BetweenFramesM, (2 * frame.SweepM) + GapM);
        var middles = Enumerable.Range(0, body.Count).Select(i => (A: side.A * pitch * i, B: side.B * pitch * i)).ToList();
        (double A, double B) Corner((double A, double B) middle, int width, int depth) =>
            (middle.A + (side.A * width * body.WidthM / 2) + (faces.A * depth * body.DepthM / 2),
            middle.B + (side.B * width * body.WidthM / 2) + (faces.B * depth * body.DepthM / 2));
        List<(double A, double B)> reach =
        [
            .. middles.SelectMany(m => new[] { Corner(m, -1, -1), Corner(m, 1, -1), Corner(m, 1, 1), Corner(m, -1, 1) }),
            .. frame.SweepM > 0 ? middles.Select(m => (m.A + frame.SweepM, m.B)) : [],
        ];
        var nearest = reach.MaxBy(p => (Math.Round(p.A, 6), -p.B));
        var (shiftA, shiftB) = (end.A - nearest.A, end.B - nearest.B);
        (double X, double Y) Moved((double A, double B) p) => axes.At(p.A + shiftA, p.B + shiftB);
        foreach (var m in middles)
            bodies.Add(new(body, [Moved(Corner(m, -1, -1)), Moved(Corner(m, 1, -1)), Moved(Corner(m, 1, 1)), Moved(Corner(m, -1, 1))]));
        if (frame.SweepM > 0)
            Sweeps = [.. middles.Select(Moved).Select(m => (m.X, m.Y, frame.SweepM))];
    }

    private void Boxes()
    {
        if (layout.Wires.Count > 0)
        {
            var at = cables.ToCollector.Count > 0 ? cables.ToCollector.Max(w => w.CableM) - PipeRunM : UsualWallM;
            var (a, b, outA, outB) = walls.At(at);
            Box = axes.At(a, b);
            Board((a, b), (outA, outB));
            HeapAt(at);
        }
        else
        {
            HeapAt(0);
        }
    }

    private double PipeRunM => runs.Where(r => r.IsWater).Select(r => r.LengthM).DefaultIfEmpty(0).First();

    private void Board((double A, double B) box, (double A, double B) outwards)
    {
        var feeds = layout.Scheme.Joints
            .Where(j => j.LengthM > 0 && cables.Component(j.From) is { Spot: Spot.Dwelling } && j.Medium == Medium.Current).ToList();
        if (feeds.Count == 0)
            return;
        var longest = feeds.Max(f => f.LengthM);
        var drawn = Drawn(longest);
        var end = axes.At(box.A + (outwards.A * drawn), box.B + (outwards.B * drawn));
        Dwelling = end;
        foreach (var feed in feeds)
        {
            IReadOnlyList<string> what = PlanCables.Of(feed, layout) is { } wire ? [PictureWords.CableBeside(wire)] : [];
            runs.Add(new(feed.From, feed.To, what, false, feed.LengthM, [end, axes.At(box.A, box.B)], drawn < longest));
        }
    }

    private void HeapAt(double boxes)
    {
        if (cables.Heap is not { } heap)
            return;
        var pipe = layout.Scheme.Joints.FirstOrDefault(j => j.Medium == Medium.Water && j.LengthM > 0
            && (cables.Component(j.From)?.Spot == Spot.Outdoors) != (cables.Component(j.To)?.Spot == Spot.Outdoors)
            && (cables.Component(j.From)?.System == cables.Component(heap.Name)?.System));
        if (pipe is null)
            return;
        var more = cables.ToHeap.Count > 0 ? cables.ToHeap.Max(w => w.CableM) - pipe.LengthM : UsualWallM;
        var (a, b, outA, outB) = walls.At(boxes + more);
        var drawn = Drawn(pipe.LengthM);
        runs.Add(new(
            "wall",
            heap.Name,
            [PictureWords.Pipes, .. cables.ToHeap.Select(w => PictureWords.CableBeside(w))],
            true,
            pipe.LengthM,
            [axes.At(a, b), axes.At(a + (outA * drawn), b + (outB * drawn))],
            drawn < pipe.LengthM));
        if (cables.ToHeap.Count > 0)
            Walk("boxes", "wall", [.. cables.ToHeap.Select(w => PictureWords.CableBeside(w))], boxes, boxes + more);
        var (middleA, middleB) = (a + (outA * (drawn + (heap.WidthM / 2))), b + (outB * (drawn + (heap.WidthM / 2))));
        bodies.Add(new(heap, axes.Square(middleA - (heap.WidthM / 2), middleB - (heap.WidthM / 2), heap.WidthM, heap.WidthM)));
    }

    // What stays in the house is told, not drawn: its way is the builder's.
    private void Inside()
    {
        bool IsToldElsewhere(Wire w) => cables.ToCollector.Contains(w) || cables.ToHeap.Contains(w);
        var feeders = runs.SelectMany(r => r.What).ToHashSet(StringComparer.Ordinal);
        foreach (var joint in layout.Scheme.Joints.Where(j => j.LengthM > 0 && j.Medium is Medium.Water or Medium.Air))
        {
            var ends = new[] { joint.From, joint.To };
            if (!ends.Any(e => cables.Component(e)?.Spot == Spot.Outdoors))
                runs.Add(new(joint.From, joint.To, [PictureWords.Pipe], true, joint.LengthM, [], false));
        }

        foreach (var wire in layout.Wires.Where(w => w.CableM > 0 && !IsToldElsewhere(w)))
        {
            if (!feeders.Contains(PictureWords.CableBeside(wire)))
                runs.Add(new("boxes", wire.Device, [PictureWords.CableBeside(wire)], false, wire.CableM, [], false));
        }
    }

    private static double Drawn(double metres) => metres > LongestM ? BrokenM : metres;

    private void Walk(string from, string to, IReadOnlyList<string> what, double begin, double end)
    {
        List<(double X, double Y)> points = [];
        var corners = walls.Corners().ToList();
        void Put(double at)
        {
            var (a, b, _, _) = walls.At(at);
            points.Add(axes.At(a, b));
        }

        Put(begin);
        foreach (var corner in corners.Where(c => c > begin + 1e-9 && c < end - 1e-9))
            Put(corner);
        Put(end);
        runs.Add(new(from, to, what, false, end - begin, points, false));
    }
}
