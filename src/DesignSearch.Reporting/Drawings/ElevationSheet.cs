using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>Where the lines of an elevation lie [m]: along the ground from the gable by which the pipe leaves, and upward.</summary>
internal sealed class ElevationSheet
{
    private const double DwellingM = 2.4;
    private const double DuctM = 0.3;
    private const double HeapPipeM = 0.4;

    // No more of a wall behind the house is drawn over its roof.
    private const double MostWallM = 1;

    private readonly List<(string Kind, IReadOnlyList<(double X, double Y)> Points, bool Closed)> lines = [];
    private readonly List<((double X, double Y) From, (double X, double Y) To, double Aside, string What)> measures = [];
    private readonly List<(string Mark, (double X, double Y) At)> marks = [];
    private readonly List<(string Mark, string Name, string Size)> rows = [];
    private readonly List<string> notes = [PictureWords.NotPrescribed];
    private readonly PlannedRun? heapRun;
    private readonly Body? heap;

    /// <summary>Lays it out.</summary>
    public ElevationSheet(JudgedLayout layout, SitePlan site, SitePlanSheet plan)
    {
        var house = site.House;
        heapRun = plan.Runs.FirstOrDefault(r => r.IsWater && r.Points.Count > 0 && r.From == "wall");
        heap = plan.Bodies.FirstOrDefault(b => b.Body.Name == heapRun?.To)?.Body;
        House(house);
        Stores(site);
        if (layout.Frame is { } frame && plan.Runs.FirstOrDefault(r => r.IsWater && r.Points.Count > 0 && r.From == "tank") is { } run)
            Collectors(frame, run, site);
        else
            Solid("ground", (0, 0), (1, 0));
        var left = Heap(house);
        Solid("ground", (left, 0), (0, 0));
        var feed = plan.Runs.FirstOrDefault(r => r.Points.Count > 0 && r.Points[0] == plan.Dwelling);
        if (feed is not null)
            Board(house, left, feed);
    }

    public IReadOnlyList<(string Kind, IReadOnlyList<(double X, double Y)> Points, bool Closed)> Lines => lines;

    public IReadOnlyList<((double X, double Y) From, (double X, double Y) To, double Aside, string What)> Measures => measures;

    public IReadOnlyList<(string Mark, (double X, double Y) At)> Marks => marks;

    public IReadOnlyList<(string Mark, string Name, string Size)> Rows => rows;

    public IReadOnlyList<string> Notes => notes;

    public IReadOnlyList<(double X, double Y)> Points => [.. lines.SelectMany(l => l.Points)];

    private void Solid(string kind, params ReadOnlySpan<(double X, double Y)> points) => lines.Add((kind, [.. points], false));

    private void Box(string kind, double x, double y, double width, double height) =>
        lines.Add((kind, [(x, y), (x + width, y), (x + width, y + height), (x, y + height)], true));

    private void Row(string name, string size, (double X, double Y) at)
    {
        var mark = PictureWords.Number(rows.Count + 1);
        rows.Add((mark, name, size));
        marks.Add((mark, at));
    }

    private void House(HouseSize house)
    {
        Box("wall", -house.LengthM, 0, house.LengthM, house.EavesM);
        Box("wall", -house.LengthM, house.EavesM, house.LengthM, house.RidgeM - house.EavesM);
        if (house.Section is { } section)
            Shell(house, section);
        measures.Add(((-house.LengthM, 0), (-house.LengthM, house.EavesM), -14, "eaves"));
        measures.Add(((-house.LengthM, 0), (-house.LengthM, house.RidgeM), -40, "ridge"));
        Row(
            "greenhouse",
            PictureWords.HouseHeights(house),
            (-house.LengthM / 2, (house.EavesM + house.RidgeM) / 2));
    }

    // Base wall and the ground outside as lines, the wall behind as far as it rises over the roof.
    private void Shell(HouseSize house, HouseSection section)
    {
        if (section.BaseWallM > 0)
            Solid("concrete", (-house.LengthM, section.BaseWallM), (0, section.BaseWallM));
        if (section.FloorBelowM > 0)
            Solid("hidden", (-house.LengthM, section.FloorBelowM), (0, section.FloorBelowM));
        if (section.BackWallTopM > house.RidgeM)
            Box("hidden", -house.LengthM, house.RidgeM, house.LengthM, Math.Min(section.BackWallTopM - house.RidgeM, MostWallM));
    }

    // The first row of the plan, from the gable inward.
    private void Stores(SitePlan site)
    {
        var x = 0.0;
        foreach (var body in site.Bodies.Where(b => b.Shape is BodyShape.Square or BodyShape.Round)
            .OrderBy(b => b.Shape == BodyShape.Square ? 0 : 1))
        {
            if (body == heap)
                continue;
            var first = x;
            for (var i = 0; i < body.Count && x + body.WidthM <= site.House.LengthM + 1e-9; i++)
            {
                Box("box", -x - body.WidthM, body.LiftM, body.WidthM, body.HeightM);
                x += body.WidthM + 0.05;
            }

            Row(body.Name, PictureWords.Body(body), (-first - (body.WidthM / 2), body.HeightM / 2));
        }

        foreach (var table in site.Bodies.Where(b => b.Shape == BodyShape.Table))
        {
            var left = -(site.House.LengthM + table.WidthM) / 2;
            Solid("hidden", (left, 0), (left, table.HeightM), (left + table.WidthM, table.HeightM), (left + table.WidthM, 0));
            Row(table.Name, PictureWords.Body(table), (left + (table.WidthM / 2), table.HeightM));
        }

        foreach (var field in site.Bodies.Where(b => b.Shape == BodyShape.Buried))
        {
            var middle = -site.House.LengthM / 2;
            var half = site.House.LengthM >= site.House.WidthM ? field.DepthM / 2 : field.WidthM / 2;
            Solid("hidden", (middle - half, field.LiftM), (middle + half, field.LiftM));
            Row(field.Name, PictureWords.Body(field), (middle, field.LiftM));
        }
    }

    private void Collectors(StandPlan frame, PlannedRun run, SitePlan site)
    {
        var tank = site.Bodies.First(b => b.Shape == BodyShape.Square);
        var above = site.CollectorAboveTankM;
        var drawn = run.IsBroken ? run.Points.Zip(run.Points.Skip(1), Apart).Sum() : run.LengthM;
        var fits = drawn > Math.Abs(above);
        var away = fits ? Math.Sqrt((drawn * drawn) - (above * above)) : 0.5;
        var (water, low) = (tank.HeightM, tank.HeightM + above);
        var (ground, end, back) = (low - frame.ClearanceM, away + 0.5, away - frame.ReachM);
        Solid("water", (0, water), (away, low));
        if (run.IsBroken || !fits)
            Break((away / 2, (water + low) / 2));
        if (!fits)
            notes.Add(PictureWords.PipeTooShort);
        Solid("ground", (0, 0), (Math.Min(0.3, away / 3), 0), (Math.Max(0.3, back - 0.3), ground), (end, ground));
        Solid("plate", (back, low + frame.RiseM), (away, low));
        foreach (var piece in frame.Pieces)
        {
            var (from, to) = (Side(piece.From), Side(piece.To));
            if (Apart(from, to) > 0.02)
                Solid("piece", from, to);
        }

        foreach (var block in frame.Blocks)
            Box("concrete", away - block.X - (block.SideM / 2), ground - block.DepthM, block.SideM, block.DepthM);
        Solid("hidden", (0, water), (away, water));
        measures.Add(((away, water), (away, low), 8, PictureWords.LowerEdge));
        measures.Add(((away, ground), (away, low), 16, "clearance"));
        if (frame.DepthM > 0)
            measures.Add(((end, ground - frame.DepthM), (end, ground), 10, "depth of the footing"));
        Row(
            "collectors",
            PictureWords.Heights(frame, above, ground),
            (away - (frame.ReachM / 2), low + (frame.RiseM / 2)));
        Row("pipe", PictureWords.PipeIs(run.LengthM, run.IsBroken || !fits), (away * 0.6, water + (0.6 * above)));
        notes.Add(PictureWords.LevelGround);
        (double X, double Y) Side(Spot3 at) => (away - at.X, ground + at.Z);
    }

    private double Heap(HouseSize house)
    {
        if (heap is null || heapRun is not { } run)
            return -house.LengthM - 0.8;
        var drawn = run.Points.Zip(run.Points.Skip(1), Apart).Sum();
        var edge = -house.LengthM - drawn;
        Box("box", edge - heap.WidthM, 0, heap.WidthM, heap.HeightM);
        Solid("water", (-house.LengthM, HeapPipeM), (edge, HeapPipeM));
        if (run.IsBroken)
            Break((edge + (drawn / 2), HeapPipeM));
        Row(heap.Name, PictureWords.Body(heap), (edge - (heap.WidthM / 2), heap.HeightM / 2));
        Row("pipes of the heap", PictureWords.PipeIs(run.LengthM, run.IsBroken), (edge + (drawn / 2), HeapPipeM));
        return edge - heap.WidthM - 0.5;
    }

    // Only the way of its cable is known, so it stands where there is room, and the cable is broken.
    private void Board(HouseSize house, double left, PlannedRun feed)
    {
        var edge = left - 2;
        Box("wall", edge - DwellingM, 0, DwellingM, DwellingM);
        Box("box", edge - 0.6, 1.2, 0.3, 0.4);
        Solid("ground", (edge - DwellingM, 0), (left, 0));
        Solid(
            "signal", (edge - 0.45, 1.2), (edge - 0.45, -DuctM), (-house.LengthM + 0.2, -DuctM), (-house.LengthM + 0.2, 1.2));
        Break(((edge + left) / 2, -DuctM));
        Row(PictureWords.Dwelling, PictureWords.CableIs(feed.LengthM), (edge - (DwellingM / 2), DwellingM / 2));
    }

    private void Break((double X, double Y) at)
    {
        Solid("measure", (at.X - 0.15, at.Y - 0.1), (at.X + 0.05, at.Y + 0.2));
        Solid("measure", (at.X - 0.05, at.Y - 0.2), (at.X + 0.15, at.Y + 0.1));
    }

    private static double Apart((double X, double Y) a, (double X, double Y) b) =>
        Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
