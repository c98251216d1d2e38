using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Drawings;

/// <summary>Lines, circles, signs and words on a sheet; words move aside for each other, so that none stands on another.</summary>
internal sealed class Sheet
{
    /// <summary>From line to line of a legend.</summary>
    public const double LineHeight = 15;

    private const int Rings = 40;
    private const double RingStep = 7;
    private const double Edge = 12;

    private static readonly (double X, double Y)[] Ways =
        [(0, -1), (1, 0), (0, 1), (-1, 0), (1, -1), (1, 1), (-1, 1), (-1, -1)];

    private readonly List<SheetLabel> labels = [];
    private readonly List<SheetLine> lines = [];
    private readonly List<Markup> marks = [];
    private double right;
    private double bottom;

    /// <summary>Width of the sheet.</summary>
    public double Width => Math.Ceiling(right + Edge);

    /// <summary>Height of the sheet.</summary>
    public double Height => Math.Ceiling(bottom + Edge);

    /// <summary>All of it.</summary>
    public Markup Body => Markup.All([.. lines.Select(Of), .. marks, .. labels.Select(Of)]);

    /// <summary>Draws a line.</summary>
    /// <param name="kind">How.</param>
    /// <param name="points">Where it bends.</param>
    public void Line(string kind, params ReadOnlySpan<(double X, double Y)> points) => Add(new(kind, [.. points]));

    /// <summary>Draws a line that comes back to its beginning.</summary>
    /// <inheritdoc cref="Line"/>
    public void Closed(string kind, params ReadOnlySpan<(double X, double Y)> points) => Add(new(kind, [.. points], true));

    /// <summary>Draws a circle.</summary>
    public void Circle(string kind, double x, double y, double radius)
    {
        Reach(x + radius, y + radius);
        marks.Add(Markup.Of($"""<circle class="{kind}" cx="{x}" cy="{y}" r="{radius}"/>{"\n"}"""));
    }

    /// <summary>Draws a sign of 24 by 24.</summary>
    /// <param name="sign">The sign.</param>
    /// <param name="x">Its left edge.</param>
    /// <param name="y">Its upper edge.</param>
    public void Sign(Markup sign, double x, double y)
    {
        Reach(x + 24, y + 24);
        marks.Add(Markup.Of($"""<g transform="translate({x} {y})">{sign}</g>{"\n"}"""));
    }

    /// <summary>Writes words in the middle of a place, or as near to it as no others stand.</summary>
    public void Label(string text, double x, double y)
    {
        foreach (var ring in Enumerable.Range(0, Rings))
        {
            foreach (var (wayX, wayY) in ring == 0 ? Ways.AsSpan(0, 1) : Ways)
            {
                var (aside, along) = (Math.Round(x + (ring * RingStep * wayX), 1), Math.Round(y + (ring * RingStep * wayY), 1));
                var label = new SheetLabel(text, aside, along, false);
                if (label.Left < 0 || label.Top < 0 || labels.Exists(label.Meets))
                    continue;
                Write(label);
                return;
            }
        }

        Write(new(text, Math.Max(x, new SheetLabel(text, 0, 0, true).Width / 2), bottom + LineHeight, false));
    }

    /// <summary>Writes words that begin at a place; the caller sees to it that none stands there.</summary>
    public void Words(string text, double x, double y) => Write(new(text, x, y, true));

    /// <summary>Writes a legend under all that was drawn, broken into lines of the sheet's width.</summary>
    /// <param name="rows">Its rows.</param>
    /// <param name="width">Room for it.</param>
    public void Legend(IEnumerable<string> rows, double width)
    {
        var most = Math.Max(24, (int)(width / new SheetLabel("x", 0, 0, true).Width));
        var y = bottom + (1.5 * LineHeight);
        foreach (var row in rows)
        {
            foreach (var line in Wrapped(row, most))
            {
                Write(new(line, Edge, y, true));
                y += LineHeight;
            }
        }
    }

    /// <summary>Words in lines of no more than so many letters; what goes on is set in.</summary>
    public static IReadOnlyList<string> Wrapped(string text, int most)
    {
        var lines = new List<string> { "" };
        foreach (var word in text.Split(' '))
        {
            if (lines[^1].Trim().Length > 0 && lines[^1].Length + 1 + word.Length > most)
                lines.Add("\u2003");
            lines[^1] += lines[^1].Trim().Length == 0 ? word : " " + word;
        }

        return lines;
    }

    private static Markup Of(SheetLine line)
    {
        var points = string.Join(' ', line.Points.Select(p => FormattableString.Invariant($"{p.X:0.##},{p.Y:0.##}")));
        var name = line.IsClosed ? Markup.Of($"polygon") : Markup.Of($"polyline");
        return new($"<{name} class=\"{line.Kind}\" points=\"{points}\"/>\n");
    }

    private static Markup Of(SheetLabel label)
    {
        var kind = label.IsLegend ? "words" : "label";
        return Markup.Of($"""<text class="{kind}" x="{label.X}" y="{label.Y}">{label.Text}</text>{"\n"}""");
    }

    private void Write(SheetLabel label)
    {
        Reach(label.Left + label.Width, label.Bottom);
        labels.Add(label);
    }

    private void Add(SheetLine line)
    {
        foreach (var (x, y) in line.Points)
            Reach(x, y);
        lines.Add(line);
    }

    private void Reach(double x, double y) => (right, bottom) = (Math.Max(right, x), Math.Max(bottom, y));
}
