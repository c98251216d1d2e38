using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Design.Schemes;
using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>A sheet of a scheme as SVG, in the page's own ink, in print too. A table beside it says the same in words.</summary>
internal static class SchemePicture
{
    /// <summary>What some media join; null where they join nothing.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="name">Short name of the picture.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="media">The media.</param>
    public static Picture? Of(JudgedLayout layout, string name, string title, params Medium[] media)
    {
        var sheet = SchemeSheet.Of(layout.Scheme, media);
        if (sheet.Lines.Count == 0)
            return null;
        var component = layout.Scheme.Components.ToDictionary(c => c.Name, StringComparer.Ordinal);
        var body = Markup.All([.. sheet.Lines.Select(Line), .. sheet.Boxes.Select(b => Box(b, component[b.Name]))]);
        var joints = sheet.Lines.Select(l => $"{Say.Whole(l.Number)} {l.Joint.From} to {l.Joint.To}: {By(l.Joint, layout)}.");
        return new(name, title, [.. joints], sheet.Width, sheet.Height, body, Table(sheet, layout, title));
    }

    private static string By(Joint joint, JudgedLayout layout)
    {
        var names = layout.Bill.Where(l => joint.PartIds.Contains(l.PartId)).Select(l => PlainText.Name(l.Name)).Distinct().ToList();
        var wire = joint.Medium == Medium.Current ? PlanCables.Of(joint, layout) : null;
        return names.Count == 0 ? Plain(joint.Medium) : (wire is { Tag.Length: > 0 } ? wire.Tag + ": " : "") + string.Join(", ", names);
    }

    private static Markup Table(SchemeSheet sheet, JudgedLayout layout, string title) => PageTable.Of(
        title,
        [new("no.", true), new("from"), new("to"), new("by"), new("length [m]", true)],
        sheet.Lines.Select(l => new Cell[]
        {
            Cell.Figure(Say.Whole(l.Number), l.Number), l.Joint.From, l.Joint.To, By(l.Joint, layout),
            l.Joint.LengthM > 0 ? Cell.Figure(Say.Plain(Math.Round(l.Joint.LengthM, 1)), l.Joint.LengthM) : "",
        }));

    private static string Plain(Medium medium) => medium switch
    {
        Medium.Water => "one screwed to the next",
        Medium.Air => "its own duct or opening",
        Medium.Shaft => "its shaft",
        Medium.Signal => "signal",
        _ => "its own lead, or inside the box",
    };

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
