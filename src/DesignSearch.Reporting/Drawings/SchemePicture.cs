using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Drawings;

/// <summary>A sheet of a scheme as SVG, in the page's own ink, in print too. A table beside it says the same in words.</summary>
internal static class SchemePicture
{
    /// <summary>The picture.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="scheme">The scheme that it is of.</param>
    /// <param name="title">What it shows, for who cannot see it.</param>
    public static Markup Of(SchemeSheet sheet, Scheme scheme, string title)
    {
        var component = scheme.Components.ToDictionary(c => c.Name, StringComparer.Ordinal);
        return Markup.Of($"""
            <svg class="scheme" role="img" aria-label="{title}" xmlns="http://www.w3.org/2000/svg"
            viewBox="0 0 {sheet.Width} {sheet.Height}"
            width="{sheet.Width}" height="{sheet.Height}">
            {Markup.All(sheet.Lines.Select(Line))}{Markup.All(sheet.Boxes.Select(b => Box(b, component[b.Name])))}</svg>

            """);
    }

    private static Markup Line(PlacedLine line)
    {
        var kind = line.Joint.Medium.ToString().ToLowerInvariant();
        var points = string.Join(' ', line.Points.Select(p => FormattableString.Invariant($"{p.X},{p.Y}")));
        var ((x, y), (endX, endY)) = (line.Points[0], line.Points[^1]);
        return Markup.Of($"""
            <polyline class="{kind}" points="{points}"/><path class="full" d="M{endX} {endY}l-5 -2.5v5z"/>
            <text class="number" x="{x + 2}" y="{y - 2}">{line.Number}</text>

            """);
    }

    private static Markup Box(PlacedBox box, Component component)
    {
        var words = SchemeSheet.NameLines(component.Name);
        var sign = SymbolDrawing.Of(component.Symbol);
        var under = sign == Markup.None ? SchemeSheet.UnderEdge : SchemeSheet.UnderSign;
        var (middle, first) = (box.X + (SchemeSheet.BoxWidth / 2), box.Y + under);
        Markup NameLine(string line, int i) => Markup.Of($"""<text x="{middle}" y="{first + (i * SchemeSheet.LineHeight)}">{line}</text>""");
        return Markup.Of($"""
            <g><rect class="box" x="{box.X}" y="{box.Y}" width="{SchemeSheet.BoxWidth}" height="{box.Height}"/>
            <g transform="translate({middle - 12} {box.Y + 3})">{sign}</g>
            {Markup.All(words.Select(NameLine))}</g>

            """);
    }
}
