namespace DesignSearch.Reporting.Front;

/// <summary>Finds room for labels beside points: each goes to the nearest place where it covers neither an earlier label nor
/// anything else that must stay clear, and its line to the point crosses no earlier one.
/// Points placed from right to left keep their labels in their own order.</summary>
/// <param name="width">Width of the field the labels must stay in.</param>
/// <param name="height">Height of the field.</param>
/// <param name="fontSize">Size of the letters, same unit.</param>
internal sealed class LabelPlaces(double width, double height, double fontSize)
{
    private const double LetterWidth = 0.53;
    private const double LineHeight = 1.2;
    private const double MostOfField = 0.55;

    private readonly List<(double Left, double Top, double Right, double Bottom)> taken = [];
    private readonly List<(double FromX, double FromY, double ToX, double ToY)> leads = [];

    /// <summary>Keeps labels off a field.</summary>
    public void Avoid(double left, double top, double right, double bottom) => taken.Add((left, top, right, bottom));

    /// <summary>Breaks a label that would take up too much of the field at its "and".</summary>
    public string[] Lines(string text)
    {
        var middle = text.IndexOf(" and ", StringComparison.Ordinal);
        return middle < 0 || text.Length * LetterWidth * fontSize < MostOfField * width ? [text] : [text[..(middle + 4)], text[(middle + 5)..]];
    }

    /// <summary>Finds a place for a label.</summary>
    /// <returns>Left end and middle height of its text, and the end from which a line leads to the point.</returns>
    public (double Left, double Middle, double LeadX) Place(double x, double y, params string[] lines)
    {
        var wide = lines.Max(l => l.Length) * LetterWidth * fontSize;
        var half = (0.75 + (0.5 * LineHeight * (lines.Length - 1))) * fontSize;
        (double Left, double Middle) best = default;
        var leastCover = double.PositiveInfinity;
        foreach (var (across, down) in Offsets())
        {
            var left = across >= 0 ? x + across : x + across - wide;
            left = Math.Clamp(left, 2, Math.Max(2, width - wide - 2));
            var middle = Math.Clamp(y + down, half + 2, height - half - 2);
            var lead = Lead(x, y, left, middle, wide, half);
            var covered = taken.Sum(t =>
                Overlap(left, left + wide, t.Left, t.Right) * Overlap(middle - half, middle + half, t.Top, t.Bottom));
            var cover = covered + (leads.Count(l => Cross(l, lead)) * fontSize * fontSize);
            if (cover < leastCover)
                (best, leastCover) = ((left, middle), cover);
            if (cover == 0)
                break;
        }

        taken.Add((best.Left - 4, best.Middle - half, best.Left + wide + 4, best.Middle + half));
        var line = Lead(x, y, best.Left, best.Middle, wide, half);
        leads.Add(line);
        return (best.Left, best.Middle, line.ToX);
    }

    private IEnumerable<(double Across, double Down)> Offsets()
    {
        for (var ring = 1; ring <= 14; ring++)
        {
            yield return (14, -1.7 * fontSize * ring);
            yield return (-14, -1.7 * fontSize * ring);
            yield return (30 + (10 * ring), -1.2 * fontSize * ring);
        }
    }

    private (double FromX, double FromY, double ToX, double ToY) Lead(double x, double y, double left, double middle, double wide, double half) =>
        (x, y, Math.Clamp(x, left + 2, left + wide - 2), middle + half - (0.2 * fontSize));

    private static bool Cross((double FromX, double FromY, double ToX, double ToY) a, (double FromX, double FromY, double ToX, double ToY) b) =>
        Side(a, b.FromX, b.FromY) * Side(a, b.ToX, b.ToY) < 0 && Side(b, a.FromX, a.FromY) * Side(b, a.ToX, a.ToY) < 0;

    private static double Side((double FromX, double FromY, double ToX, double ToY) line, double x, double y) =>
        ((line.ToX - line.FromX) * (y - line.FromY)) - ((line.ToY - line.FromY) * (x - line.FromX));

    private static double Overlap(double a, double b, double c, double d) => Math.Max(0, Math.Min(b, d) - Math.Max(a, c));
}
