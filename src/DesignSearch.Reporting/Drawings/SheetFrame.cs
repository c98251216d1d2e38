using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Drawings;

/// <summary>Puts metres on a sheet: a round scale, a bar that says it, lines with their measure.</summary>
internal sealed class SheetFrame
{
    private const double Edge = 34;
    private static readonly double[] Scales = [200, 150, 120, 100, 80, 60, 50, 40, 30, 25, 20, 15, 12, 10, 8, 6, 5, 4, 3, 2, 1];
    private static readonly double[] Bars = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];

    private readonly double left;
    private readonly double top;

    /// <summary>Fits points into a room.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="points">All that must be on it [m], the second upward.</param>
    /// <param name="width">Room.</param>
    /// <param name="height">Room.</param>
    public SheetFrame(Sheet sheet, IReadOnlyList<(double X, double Y)> points, double width, double height)
    {
        var (wide, high) = (points.Max(p => p.X) - points.Min(p => p.X), points.Max(p => p.Y) - points.Min(p => p.Y));
        Sheet = sheet;
        Scale = Scales.First(s => s == Scales[^1] || (s * wide <= width && s * high <= height));
        (left, top) = (Edge - (Scale * points.Min(p => p.X)), Edge + (Scale * points.Max(p => p.Y)));
    }

    /// <summary>The sheet.</summary>
    public Sheet Sheet { get; }

    /// <summary>Steps of the sheet to a metre.</summary>
    public double Scale { get; }

    /// <summary>A place on the sheet.</summary>
    public (double X, double Y) At((double X, double Y) point) => (left + (Scale * point.X), top - (Scale * point.Y));

    /// <summary>A line.</summary>
    public void Line(string kind, IReadOnlyList<(double X, double Y)> points) => Sheet.Line(kind, [.. points.Select(At)]);

    /// <summary>A closed line.</summary>
    public void Closed(string kind, IReadOnlyList<(double X, double Y)> points) => Sheet.Closed(kind, [.. points.Select(At)]);

    /// <summary>A circle.</summary>
    public void Circle(string kind, (double X, double Y) middle, double radiusM)
    {
        var (x, y) = At(middle);
        Sheet.Circle(kind, x, y, radiusM * Scale);
    }

    /// <summary>Words as near to a place as others leave room.</summary>
    public void Label(string text, (double X, double Y) at)
    {
        var (x, y) = At(at);
        Sheet.Label(text, x, y + 4);
    }

    /// <summary>A measure: a thin line with strokes at its ends, beside what it measures, and its length.</summary>
    /// <param name="from">One end [m].</param>
    /// <param name="to">The other [m].</param>
    /// <param name="aside">How far beside, on the sheet: to the right of the way from one to the other.</param>
    public void Measure((double X, double Y) from, (double X, double Y) to, double aside)
    {
        var ((x1, y1), (x2, y2)) = (At(from), At(to));
        var length = Math.Sqrt(((x2 - x1) * (x2 - x1)) + ((y2 - y1) * (y2 - y1)));
        if (length < 1)
            return;
        var (nx, ny) = (-(y2 - y1) / length, (x2 - x1) / length);
        (double X, double Y) Beside(double x, double y, double by) => (x + (nx * by), y + (ny * by));
        Sheet.Line("measure", Beside(x1, y1, aside), Beside(x2, y2, aside));
        foreach (var (x, y) in new[] { (x1, y1), (x2, y2) })
            Sheet.Line("measure", Beside(x, y, aside - 4), Beside(x, y, aside + 4));
        var (mx, my) = Beside((x1 + x2) / 2, (y1 + y2) / 2, aside);
        Sheet.Label(PictureWords.Metres(Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)))), mx, my + 4);
    }

    /// <summary>The scale as a bar of whole metres, or a round part of one.</summary>
    public void Bar()
    {
        var metres = Bars.First(b => b == Bars[^1] || b * Scale >= 48);
        var y = Sheet.Height + 10;
        Sheet.Line("bar", (Edge, y), (Edge + (metres * Scale), y));
        foreach (var x in new[] { Edge, Edge + (metres * Scale) })
            Sheet.Line("measure", (x, y - 5), (x, y + 5));
        Sheet.Words(PictureWords.Bar(metres), Edge + (metres * Scale) + 8, y + 4);
    }
}
