using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>The elevation to scale: heights of house, stores, collectors, footing and heap, and the pipe to the collector.</summary>
internal static class ElevationPicture
{
    private const double Width = 560;
    private const double Height = 300;

    /// <summary>The elevation; null where the sizes were not stored.</summary>
    public static Picture? Of(JudgedLayout layout)
    {
        if (SitePlanSheet.Of(layout) is not { } plan || layout.Site is not { } site)
            return null;
        var drawing = new ElevationSheet(layout, site, plan);
        var sheet = new Sheet();
        var frame = new SheetFrame(sheet, drawing.Points, Width, Height);
        foreach (var (kind, points, closed) in drawing.Lines)
        {
            if (closed)
                frame.Closed(kind, points);
            else
                frame.Line(kind, points);
        }

        foreach (var (from, to, aside, _) in drawing.Measures)
            frame.Measure(from, to, aside);
        foreach (var (mark, at) in drawing.Marks)
            frame.Label(mark, at);
        frame.Bar();
        sheet.Legend(
            [.. drawing.Rows.Select(r => $"{r.Mark} {r.Name}: {r.Size}"), .. drawing.Notes],
            Math.Max(Width, sheet.Width));
        string[] says = [.. drawing.Rows.Select(r => $"{r.Name}: {r.Size}."), .. drawing.Notes];
        return new("elevation", PictureWords.ElevationTitle, says, sheet.Width, sheet.Height, sheet.Body, Table(drawing));
    }

    private static Markup Table(ElevationSheet drawing) => Markup.Of($"""
        {drawing.Notes.Select(n => Markup.Of($"<p>{n}</p>"))}
        {PageTable.Of(
            "Heights",
            [new("no."), new("what"), new("height")],
            drawing.Rows.Select(r => new Cell[] { r.Mark, r.Name, r.Size }))}
        """);
}
