using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>The house from its end to scale, where it is more than a plain gable house: cover, solid walls, floor and the ground outside.</summary>
internal static class SectionPicture
{
    private const double Width = 420;
    private const double Height = 300;
    private const double OutM = 0.8;
    private const double WallThickM = 0.3;

    /// <summary>The section; null for a plain house, and where the sizes were not stored.</summary>
    public static Picture? Of(JudgedLayout layout)
    {
        if (layout.Site?.House is not { Section: { } section } house)
            return null;
        var (width, top, ground) = (house.WidthM, house.RidgeM, section.FloorBelowM);
        var wall = section.BackWallTopM;
        List<(double X, double Y)> cover = [.. section.Cover.Select(p => (p.X, p.Z))];
        // The wall may go far up: it is drawn a little over the roof and broken there.
        var wallTop = Math.Min(wall, top + OutM);
        List<(double X, double Y)> extent = [.. cover, (-OutM, 0), (width + OutM, Math.Max(top, wallTop)), (0, 0)];
        var sheet = new Sheet();
        var frame = new SheetFrame(sheet, extent, Width, Height);
        frame.Line("wall", cover);
        frame.Line("ground", [(0, 0), (width, 0)]);
        var rows = new List<(string Mark, string Name, string Size)> { ("1", "greenhouse", SectionWords.Heights(house, section)) };
        frame.Label("1", (width / 2, section.Cover[0].Z + ((top - section.Cover[0].Z) / 3)));
        void Row(string name, string size, (double X, double Y) at)
        {
            rows.Add((PictureWords.Number(rows.Count + 1), name, size));
            frame.Label(rows[^1].Mark, at);
        }

        frame.Line("ground", [(-OutM, ground), (0, ground), (0, 0)]);
        if (wall > 0)
        {
            frame.Line("concrete", [(width, 0), (width, wallTop), (width + WallThickM, wallTop), (width + WallThickM, 0)]);
            Row(SectionWords.BackWall, SectionWords.Wall(wall), (width + (WallThickM / 2), top / 2));
        }
        else
        {
            frame.Line("ground", [(width + OutM, ground), (width, ground), (width, 0)]);
        }

        if (section.BaseWallM > 0)
        {
            foreach (var x in wall > 0 ? new[] { 0.0 } : [0.0, width])
                frame.Line("concrete", [(x, 0), (x, section.BaseWallM)]);
            Row(SectionWords.BaseWall, SectionWords.Wall(section.BaseWallM), (0, section.BaseWallM / 2));
        }

        frame.Measure((0, 0), (width, 0), 16);
        frame.Measure((0, 0), (0, house.EavesM), -16);
        frame.Measure((0, 0), (0, top), -42);
        if (ground > 0)
            frame.Measure((-OutM, 0), (-OutM, ground), -10);
        frame.Bar();
        string[] notes = section.Shape == HouseShape.Tunnel ? [SectionWords.Inside, SectionWords.Facets(section)] : [SectionWords.Inside];
        sheet.Legend([.. rows.Select(r => $"{r.Mark} {r.Name}: {r.Size}"), .. notes], Math.Max(Width, sheet.Width));
        string[] says = [.. rows.Select(r => $"{r.Name}: {r.Size}."), .. notes];
        return new("section", SectionWords.Title, says, sheet.Width, sheet.Height, sheet.Body, Table(rows, notes));
    }

    private static Markup Table(List<(string Mark, string Name, string Size)> rows, IEnumerable<string> notes) => Markup.Of($"""
        {notes.Select(n => Markup.Of($"<p>{n}</p>"))}
        {PageTable.Of(
            SectionWords.Title,
            [new("no."), new("what"), new("height")],
            rows.Select(r => new Cell[] { r.Mark, r.Name, r.Size }))}
        """);
}
