using DesignSearch.Climate;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Reporting.Words;
using ScottPlot;

namespace DesignSearch.Reporting.Front;

/// <summary>How one way of turning the collector is shown: in words, by a shape and by a colour. Each of the three is enough on its own.</summary>
/// <param name="Key">Word of the stored run.</param>
/// <param name="Words">The same in plain words.</param>
/// <param name="Colour">Colour on white, from a palette that colour-blind readers can tell apart (Okabe and Ito 2008, "Color Universal Design"); the page has its own for dark screens.</param>
/// <param name="Shape">Shape in the picture file.</param>
/// <param name="Path">The same shape for the page, centred on 0 and about 12 wide.</param>
internal sealed record TurningMode(string Key, string Words, string Colour, MarkerShape Shape, string Path)
{
    private static readonly TurningMode[] Known =
    [
        new("none", "no collector", "#595959", MarkerShape.FilledSquare, "M-5-5H5V5H-5Z"),
        new("fixed", "fixed", "#0072B2", MarkerShape.FilledCircle, "M-6 0A6 6 0 1 1 6 0A6 6 0 1 1-6 0Z"),
        new("two-position", "two positions a day", "#D55E00", MarkerShape.FilledTriangleUp, "M0-7L7 5H-7Z"),
        new("stepped", "turned in steps", "#009E73", MarkerShape.FilledDiamond, "M0-8L7 0L0 8L-7 0Z"),
        new("continuous", "follows the sun", "#AA4A8B", MarkerShape.FilledTriangleDown, "M0 7L7-5H-7Z"),
    ];

    /// <summary>The way with this key; one that this program does not know is shown by its own word.</summary>
    public static TurningMode Of(string key) =>
        Known.FirstOrDefault(m => m.Key == key) ?? new("other", PlainText.Name(key), "#000000", MarkerShape.FilledSquare, "M-5-5H5V5H-5Z");

    /// <summary>Place in the legend.</summary>
    public int Order => Array.FindIndex(Known, m => m.Key == Key) is var i and >= 0 ? i : Known.Length;
}
