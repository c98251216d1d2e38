namespace DesignSearch.Reporting.Drawings;

/// <summary>Words on a sheet, from where they begin, with the room that they take.</summary>
/// <param name="Text">The words.</param>
/// <param name="X">Their middle, or their left edge in a legend.</param>
/// <param name="Y">Their base line.</param>
/// <param name="IsLegend">True in a legend, where words begin at the left.</param>
internal sealed record SheetLabel(string Text, double X, double Y, bool IsLegend)
{
    /// <summary>Size of the letters.</summary>
    public const double Letter = 11;

    // Letters of a plain face are no wider than this on average (measured on the page's own).
    private const double Wide = 0.62;

    /// <summary>Room that it takes.</summary>
    public double Width => Text.Length * Letter * Wide;

    /// <summary>Left edge.</summary>
    public double Left => IsLegend ? X : X - (Width / 2);

    /// <summary>Upper edge.</summary>
    public double Top => Y - Letter;

    /// <summary>Lower edge.</summary>
    public double Bottom => Y + 3;

    /// <summary>Whether another stands in its room.</summary>
    /// <param name="other">The other.</param>
    public bool Meets(SheetLabel other) =>
        Left < other.Left + other.Width && other.Left < Left + Width && Top < other.Bottom && other.Top < Bottom;
}
