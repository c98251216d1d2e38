using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>The plan to scale, north above: house, stores, collectors, pipes and cables with their lengths.</summary>
internal static class PlanPicture
{
    private const double Width = 560;
    private const double Height = 420;
    private const double DwellingM = 1;
    private const double NumberRadius = 8;

    /// <summary>The plan; null where the sizes were not stored.</summary>
    public static Picture? Of(JudgedLayout layout)
    {
        if (SitePlanSheet.Of(layout) is not { } plan || layout.Site is not { } site)
            return null;
        var sheet = new Sheet();
        var frame = new SheetFrame(sheet, Extent(plan), Width, Height);
        Draw(frame, plan, site);
        frame.Bar();
        var (bodies, runs) = (BodyRows(plan, layout), RunRows(plan));
        string[] notes = plan.StoresFit ? [PictureWords.NotPrescribed] : [PictureWords.NotPrescribed, PictureWords.StoresDoNotFit];
        sheet.Legend(
            [.. bodies.Select(b => $"{b.Mark} {b.Name}: {b.Size}"), .. runs.Where(r => r.Letter.Length > 0).Select(Told), .. notes],
            Math.Max(Width, sheet.Width));
        string[] says =
        [
            PictureWords.PlanSays(site.House), .. bodies.Select(b => $"{b.Name}: {b.Size}."), .. runs.Select(r => Told(r) + "."), .. notes,
        ];
        return new("plan", PictureWords.PlanTitle, says, sheet.Width, sheet.Height, sheet.Body, Tables(bodies, runs, notes));
    }

    private static List<(double X, double Y)> Extent(SitePlanSheet plan)
    {
        List<(double X, double Y)> all =
        [
            .. plan.House, .. plan.BackWall, .. plan.Bodies.SelectMany(b => b.Corners), .. plan.Runs.SelectMany(r => r.Points),
            .. plan.Sweeps.SelectMany(s => new[] { (s.X - s.Radius, s.Y - s.Radius), (s.X + s.Radius, s.Y + s.Radius) }),
        ];
        if (plan.Dwelling is { } end)
            all.AddRange([(end.X - DwellingM, end.Y - DwellingM), (end.X + DwellingM, end.Y + DwellingM)]);
        return all;
    }

    private static void Draw(SheetFrame frame, SitePlanSheet plan, SitePlan site)
    {
        frame.Line("hidden", plan.Ridge);
        foreach (var body in plan.Bodies)
            One(frame, body);
        frame.Closed("wall", plan.House);
        if (plan.BackWall.Count > 0)
            frame.Closed("concrete", plan.BackWall);
        foreach (var (x, y, radius) in plan.Sweeps)
            frame.Circle("hidden", (x, y), radius);
        Runs(frame, plan);
        if (plan.Box is { } box)
            frame.Circle("full", box, 4 / frame.Scale);
        if (plan.Dwelling is { } end)
            frame.Closed(
                "wall",
                [
                    (end.X - DwellingM, end.Y - DwellingM), (end.X + DwellingM, end.Y - DwellingM),
                    (end.X + DwellingM, end.Y + DwellingM), (end.X - DwellingM, end.Y + DwellingM),
                ]);
        foreach (var arrow in plan.Bodies.Where(b => b.Body.Shape == BodyShape.Frame))
            Arrow(frame, arrow.Middle, plan.Facing);
        frame.Measure(plan.House[2], plan.House[1], MeasureSide(plan));
        frame.Measure(plan.House[3], plan.House[2], MeasureSide(plan));
        Marks(frame, plan);
        North(frame.Sheet);
    }

    // To the outside: which hand that is turns on whether the plan is mirrored.
    private static double MeasureSide(SitePlanSheet plan)
    {
        var (a, b, c) = (plan.House[0], plan.House[1], plan.House[2]);
        return ((b.X - a.X) * (c.Y - b.Y)) - ((b.Y - a.Y) * (c.X - b.X)) > 0 ? -16 : 16;
    }

    private static void One(SheetFrame frame, PlannedBody body)
    {
        switch (body.Body.Shape)
        {
            case BodyShape.Round:
                frame.Circle("box", body.Middle, body.Body.WidthM / 2);
                break;
            case BodyShape.Buried:
                frame.Line("hidden", body.Corners);
                break;
            default:
                frame.Closed(body.Body.Shape == BodyShape.Table ? "hidden" : "box", body.Corners);
                break;
        }
    }

    private static void Arrow(SheetFrame frame, (double X, double Y) from, (double X, double Y) way)
    {
        var (x, y) = frame.At(from);
        var (dx, dy) = (way.X, -way.Y);
        var (endX, endY) = (x + (34 * dx), y + (34 * dy));
        frame.Sheet.Line("measure", (x, y), (endX, endY));
        frame.Sheet.Line(
            "measure",
            (endX - (7 * dx) - (4 * dy), endY - (7 * dy) + (4 * dx)),
            (endX, endY),
            (endX - (7 * dx) + (4 * dy), endY - (7 * dy) - (4 * dx)));
    }

    private static void Runs(SheetFrame frame, SitePlanSheet plan)
    {
        foreach (var run in plan.Runs.Where(r => r.Points.Count > 1))
        {
            frame.Line(run.IsWater ? "water" : "signal", run.Points);
            if (!run.IsBroken)
                continue;
            var ((x1, y1), (x2, y2)) = (frame.At(run.Points[^2]), frame.At(run.Points[^1]));
            var (x, y) = ((x1 + x2) / 2, (y1 + y2) / 2);
            frame.Sheet.Line("measure", (x - 7, y + 3), (x + 5, y - 9));
            frame.Sheet.Line("measure", (x - 5, y + 9), (x + 7, y - 3));
        }
    }

    // Each body once by its number, each run by its letter.
    private static void Marks(SheetFrame frame, SitePlanSheet plan)
    {
        var number = 0;
        foreach (var body in plan.Bodies.GroupBy(b => b.Body))
            frame.Label(PictureWords.Number(++number), body.First().Middle);
        if (plan.Box is { } box)
            frame.Label(PictureWords.Number(++number), box);
        if (plan.Dwelling is { } end)
            frame.Label(PictureWords.Number(++number), end);
        var letter = 0;
        foreach (var run in plan.Runs.Where(r => r.Points.Count > 1))
        {
            var (a, b) = run.Points.Count > 2 ? (run.Points[^2], run.Points[^1]) : (run.Points[0], run.Points[^1]);
            frame.Label(PictureWords.Letter(letter++), ((a.X * 0.35) + (b.X * 0.65), (a.Y * 0.35) + (b.Y * 0.65)));
        }
    }

    private static void North(Sheet sheet)
    {
        var x = sheet.Width + (2 * NumberRadius);
        sheet.Line("bar", (x, 58), (x, 22));
        sheet.Line("bar", (x - 5, 32), (x, 22), (x + 5, 32));
        sheet.Label("N", x, 16);
    }

    private static List<(string Mark, string Name, string Size)> BodyRows(SitePlanSheet plan, JudgedLayout layout)
    {
        var rows = new List<(string, string, string)>();
        string Next() => PictureWords.Number(rows.Count + 1);
        foreach (var body in plan.Bodies.Select(b => b.Body).Distinct())
        {
            var faces = body.Shape == BodyShape.Frame && layout.Frame is { } f ? "; " + PictureWords.Stands(f) : "";
            rows.Add((Next(), body.Name, PictureWords.Body(body) + faces));
        }

        if (plan.Box is not null)
            rows.Add((Next(), PictureWords.Boxes, PictureWords.BoxesAre));
        if (plan.Dwelling is not null)
            rows.Add((Next(), PictureWords.Dwelling, PictureWords.DwellingIs));
        return rows;
    }

    private static List<(string Letter, PlannedRun Run)> RunRows(SitePlanSheet plan)
    {
        var letter = 0;
        return [.. plan.Runs.Select(r => (r.Points.Count > 1 ? PictureWords.Letter(letter++) : "", r))];
    }

    private static string Told((string Letter, PlannedRun Run) row) =>
        $"{row.Letter} {row.Run.From} to {row.Run.To}: {PictureWords.Metres(row.Run.LengthM)} ({How(row.Run)}); "
        + string.Join(", ", row.Run.What);

    private static string How(PlannedRun run) =>
        run.Points.Count == 0 ? PictureWords.NotDrawn : run.IsBroken ? PictureWords.Broken : PictureWords.ToScale;

    private static Markup Tables(
        List<(string Mark, string Name, string Size)> bodies, List<(string Letter, PlannedRun Run)> runs, IEnumerable<string> notes) =>
        Markup.Of($"""
            {notes.Select(n => Markup.Of($"<p>{n}</p>"))}
            {PageTable.Of(
                "What stands where",
                [new("no."), new("what"), new("size")],
                bodies.Select(b => new Cell[] { b.Mark, b.Name, b.Size }))}
            {PageTable.Of(
                "Pipes and cables",
                [new("letter"), new("from"), new("to"), new("what"), new("one way [m]", true), new("drawn")],
                runs.Select(r => new Cell[]
                {
                    r.Letter, r.Run.From, r.Run.To, string.Join(", ", r.Run.What),
                    Cell.Figure(Say.Plain(Math.Round(r.Run.LengthM, 1)), r.Run.LengthM), How(r.Run),
                }))}
            """);
}
