using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Plans;
using DesignSearch.Parts.Solar;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>The frame from its side, from its front and from above, with its footing, sizes and what to cut.</summary>
internal static class FramePicture
{
    private const double Width = 600;
    private const double Height = 440;
    private const double BetweenM = 1.0;

    /// <summary>The frame; null where there is none.</summary>
    public static Picture? Of(JudgedLayout layout)
    {
        if (layout.Frame is not { } stand)
            return null;
        var (pieces, blocks) = (stand.Pieces, stand.Blocks);
        List<(double X, double Y)> outline =
        [
            .. pieces.SelectMany(p => new[] { p.From, p.To }).SelectMany(p => new[] { Side(p), Front(stand, p) }),
            .. blocks.SelectMany(b => Corners(stand, b)),
            (0, stand.ClearanceM), (FrontAt(stand) + stand.WidthM, 0), (0, -stand.DepthM), .. Above(stand, blocks),
        ];
        var sheet = new Sheet();
        var frame = new SheetFrame(sheet, outline, Width, Height);
        Draw(frame, stand, pieces, blocks);
        frame.Bar();
        var letters = pieces.Select(p => p.Name).Distinct().Select((n, i) => (n, PictureWords.Letter(i)))
            .ToDictionary(p => p.n, p => p.Item2, StringComparer.Ordinal);
        var cuts = stand.CutList.Select(c => (Letter: letters[c.Name], Cut: c)).ToList();
        var notes = Notes(layout, stand, blocks);
        sheet.Legend([.. cuts.Select(c => PictureWords.Cut(c.Letter, c.Cut)), .. notes], Math.Max(Width, sheet.Width));
        string[] says = [.. notes, .. cuts.Select(c => PictureWords.Cut(c.Letter, c.Cut) + ".")];
        return new("frame", PictureWords.FrameTitle, says, sheet.Width, sheet.Height, sheet.Body, Table(cuts, notes));
    }

    private static (double X, double Y) Side(Spot3 at) => (at.X, at.Z);

    private static double FrontAt(StandPlan stand) => Math.Max(stand.ReachM, (stand.ReachM + stand.FeetApartM) / 2) + BetweenM;

    private static (double X, double Y) Front(StandPlan stand, Spot3 at) => (FrontAt(stand) + at.Y, at.Z);

    private static double GroundAt(StandPlan stand) => -stand.DepthM - BetweenM;

    private static IEnumerable<(double X, double Y)> Corners(StandPlan stand, Block block)
    {
        foreach (var side in new[] { -block.SideM / 2, block.SideM / 2 })
        {
            yield return (block.X + side, -block.DepthM);
            yield return (FrontAt(stand) + block.Y + side, -block.DepthM);
        }
    }

    // Where the feet and blocks are set out, seen from above, under the front view.
    private static IEnumerable<(double X, double Y)> Above(StandPlan stand, IReadOnlyList<Block> blocks)
    {
        if (stand.Founding == Founding.Wall)
            yield break;
        foreach (var foot in Feet(stand, blocks))
            yield return (FrontAt(stand) + foot.Y, GroundAt(stand) - Depth(stand, foot.X));
        var most = blocks.Select(b => b.SideM).DefaultIfEmpty(0).Max();
        yield return (FrontAt(stand), GroundAt(stand) - Math.Max(stand.FeetApartM, stand.ReachM) - most);
    }

    private static double Depth(StandPlan stand, double x) => x - ((stand.ReachM - stand.FeetApartM) / 2);

    private static IEnumerable<(double X, double Y)> Feet(StandPlan stand, IReadOnlyList<Block> blocks) => blocks.Count > 0
        ? blocks.Select(b => (b.X, b.Y))
        : stand.Pieces.SelectMany(p => new[] { p.From, p.To }).Where(p => p.Z == 0).Select(p => (p.X, p.Y)).Distinct();

    private static void Draw(SheetFrame frame, StandPlan stand, IReadOnlyList<Piece> pieces, IReadOnlyList<Block> blocks)
    {
        var right = FrontAt(stand) + stand.WidthM;
        if (stand.Founding == Founding.Wall)
            frame.Line("ground", [(stand.ReachM, 0), (stand.ReachM, stand.ClearanceM + Math.Max(stand.RiseM, 0.2) + 0.2)]);
        else
            frame.Line("ground", [(Math.Min(0, (stand.ReachM - stand.FeetApartM) / 2) - 0.2, 0), (right + 0.2, 0)]);
        foreach (var piece in pieces)
        {
            frame.Line("piece", [Side(piece.From), Side(piece.To)]);
            frame.Line("piece", [Front(stand, piece.From), Front(stand, piece.To)]);
        }

        frame.Line("plate", [(0, stand.ClearanceM), (stand.ReachM, stand.ClearanceM + stand.RiseM)]);
        Blocks(frame, stand, blocks);
        Ground(frame, stand, blocks);
        Measures(frame, stand, blocks);
        Marks(frame, stand, pieces);
    }

    private static void Blocks(SheetFrame frame, StandPlan stand, IReadOnlyList<Block> blocks)
    {
        foreach (var block in blocks)
        {
            var half = block.SideM / 2;
            foreach (var x in new[] { block.X, FrontAt(stand) + block.Y })
                frame.Closed("concrete", [(x - half, 0), (x + half, 0), (x + half, -block.DepthM), (x - half, -block.DepthM)]);
        }
    }

    private static void Ground(SheetFrame frame, StandPlan stand, IReadOnlyList<Block> blocks)
    {
        if (stand.Founding == Founding.Wall)
            return;
        foreach (var (x, y) in Feet(stand, blocks))
        {
            var (u, v) = (FrontAt(stand) + y, GroundAt(stand) - Depth(stand, x));
            frame.Circle("full", (u, v), 2.5 / frame.Scale);
            foreach (var half in blocks.Where(b => b.X == x && b.Y == y).Select(b => b.SideM / 2))
                frame.Closed("concrete", [(u - half, v - half), (u + half, v - half), (u + half, v + half), (u - half, v + half)]);
        }

        var feet = Feet(stand, blocks).ToList();
        if (feet.Count < 2)
            return;
        var (minX, maxX) = (feet.Min(f => f.X), feet.Max(f => f.X));
        var (minY, maxY) = (feet.Min(f => f.Y), feet.Max(f => f.Y));
        (double X, double Y) Set(double x, double y) => (FrontAt(stand) + y, GroundAt(stand) - Depth(stand, x));
        frame.Measure(Set(minX, maxY), Set(maxX, maxY), -30);
        frame.Measure(Set(maxX, minY), Set(maxX, maxY), 30);
    }

    private static void Measures(SheetFrame frame, StandPlan stand, IReadOnlyList<Block> blocks)
    {
        var (low, high) = (stand.ClearanceM, stand.ClearanceM + stand.RiseM);
        frame.Measure((0, low), (stand.ReachM, high), -14);
        frame.Measure((0, 0), (0, low), -18);
        frame.Measure((FrontAt(stand) + stand.WidthM, 0), (FrontAt(stand) + stand.WidthM, high), 18);
        frame.Measure((FrontAt(stand), high), (FrontAt(stand) + stand.WidthM, high), -14);
        if (blocks is [var first, ..])
        {
            frame.Measure((first.X - (first.SideM / 2), -first.DepthM), (first.X + (first.SideM / 2), -first.DepthM), 12);
            frame.Measure((first.X - (first.SideM / 2), -first.DepthM), (first.X - (first.SideM / 2), 0), -12);
        }
    }

    // One letter for each kind of piece, in the view where it is longest.
    private static void Marks(SheetFrame frame, StandPlan stand, IReadOnlyList<Piece> pieces)
    {
        var letter = 0;
        foreach (var piece in pieces.GroupBy(p => p.Name).Select(g => g.First()))
        {
            var isAcross = Math.Abs(piece.From.Y - piece.To.Y) > Math.Abs(piece.From.X - piece.To.X) + Math.Abs(piece.From.Z - piece.To.Z);
            var (a, b) = isAcross ? (Front(stand, piece.From), Front(stand, piece.To)) : (Side(piece.From), Side(piece.To));
            frame.Label(PictureWords.Letter(letter++), ((a.X * 0.6) + (b.X * 0.4), (a.Y * 0.6) + (b.Y * 0.4)));
        }
    }

    private static List<string> Notes(JudgedLayout layout, StandPlan stand, IReadOnlyList<Block> blocks)
    {
        var notes = new List<string> { PictureWords.Frame(stand) };
        if (layout.Bill.FirstOrDefault(l => l.PartId == stand.MountId) is { } mount)
        {
            notes.Add(PictureWords.Mount(mount.Name, mount.Quantity, mount.Unit, stand.MountIsByArea));
            notes.AddRange(layout.Bill.Where(l => stand.HeldBy.Contains(l.PartId) && l.System == mount.System)
                .Select(l => PictureWords.OnList(l.Name, l.Quantity, l.Unit)));
        }

        if (blocks is [var first, ..])
        {
            var all = blocks.Sum(b => b.VolumeM3) * stand.Frames;
            notes.Add(PictureWords.Blocks(blocks.Count * stand.Frames, first.SideM, first.DepthM, first.VolumeM3, all));
            notes.Add(PictureWords.Formwork);
        }

        if (stand.BallastKg > 0)
            notes.Add(PictureWords.Ballast(stand.BallastKg, stand.Frames));
        notes.AddRange([PictureWords.Joints, PictureWords.Sections, PictureWords.OwnBracing]);
        return notes;
    }

    private static Markup Table(List<(string Letter, CutLine Cut)> cuts, IEnumerable<string> notes) => Markup.Of($"""
        {notes.Select(n => Markup.Of($"<p>{n}</p>"))}
        {PageTable.Of(
            "Pieces of all frames",
            [new("letter"), new("piece"), new("how many", true), new("length [m]", true)],
            cuts.Select(c => new Cell[]
            {
                c.Letter, c.Cut.Name, Cell.Figure(Say.Whole(c.Cut.Count), c.Cut.Count),
                Cell.Figure(Say.Plain(c.Cut.LengthM), c.Cut.LengthM),
            }))}
        """);
}
