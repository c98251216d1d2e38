using DesignSearch.Reporting.Words;
using ScottPlot;

namespace DesignSearch.Reporting.Front;

/// <summary>How one way of turning the collector is shown: in words, by a shape and by a colour. Each of the three is enough on its own.</summary>
/// <param name="Key">Word of the stored run.</param>
/// <param name="Words">The same in plain words.</param>
/// <param name="Colour">Colour on white, from a palette that colour-blind readers can tell apart (Okabe and Ito 2008, "Color
/// Universal Design"); the page has its own for dark screens.</param>
/// <param name="Shape">Shape.</param>
internal sealed record TurningMode(string Key, string Words, string Colour, MarkerShape Shape)
{
    private const string OtherColour = "#000000";

    private static readonly TurningMode[] Known =
    [
        new("none", "no collector", "#595959", MarkerShape.FilledSquare),
        new("fixed", "fixed", "#0072B2", MarkerShape.FilledCircle),
        new("two-position", "two positions a day", "#D55E00", MarkerShape.FilledTriangleUp),
        new("stepped", "turned in steps", "#009E73", MarkerShape.FilledDiamond),
        new("continuous", "follows the sun", "#AA4A8B", MarkerShape.FilledTriangleDown),
    ];

    /// <summary>The way with this key; one that this program does not know is shown by its own word.</summary>
    public static TurningMode Of(string key) =>
        Known.FirstOrDefault(m => m.Key == key) ?? new("other", PlainText.Name(key), OtherColour, MarkerShape.FilledSquare);

    /// <summary>Place in the legend of the way that has a colour, as an SVG file writes the colour; null where none has it.</summary>
    public static int? OrderOfColour(string colour) =>
        colour is "black" or OtherColour ? Known.Length : Array.FindIndex(Known, m => m.Colour == colour) is var i and >= 0 ? i : null;

    /// <summary>Place in the legend.</summary>
    public int Order => Array.FindIndex(Known, m => m.Key == Key) is var i and >= 0 ? i : Known.Length;
}
