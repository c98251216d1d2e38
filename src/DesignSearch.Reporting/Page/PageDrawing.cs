using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using DesignSearch.Reporting.Front;
using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Page;

/// <summary>
/// Fits a drawing of the chart library into the page: its colours become the page's own, light, dark or printed, and its letters the
/// page's own, each text where the library set its middle.
/// </summary>
internal static partial class PageDrawing
{
    private const double UsualLetter = 0.6;

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>The drawing as one group that a screen reader passes over; what it shows is said beside it.</summary>
    /// <param name="raw">What the chart library wrote.</param>
    public static Markup Of(string raw)
    {
        var root = XDocument.Parse(raw).Root!;
        var group = new XElement("g", new XAttribute("aria-hidden", "true"), root.Elements().SelectMany(Unclipped));
        foreach (var element in group.DescendantsAndSelf())
        {
            element.Name = element.Name.LocalName;
            if (element.Name == "text")
                Centre(element);
            Paint(element, "fill", colour => TurningMode.OrderOfColour(colour) is { } order ? $"m{order}" : null);
            Paint(element, "stroke", colour => StrokeClass(element, colour));
            element.Attribute("stroke-miterlimit")?.Remove();
            foreach (var attribute in element.Attributes())
                attribute.Value = LongFigure().Replace(attribute.Value, m => Number(m.Value).ToString("0.##", Plain));
        }

        return Markup.Of(group);
    }

    // Hardly a point's edge reaches beyond the field, so nothing needs clipping; the ground is the page's, and so is what stands behind a label.
    private static IEnumerable<XElement> Unclipped(XElement element) => element.Name.LocalName switch
    {
        "clipPath" => [],
        "rect" when IsWhite(element) => [],
        "g" => element.Elements().Where(e => !IsWhite(e)).Select(AsLabel),
        _ => [element],
    };

    private static bool IsWhite(XElement element) => element.Attribute("fill")?.Value == "white";

    private static XElement AsLabel(XElement element)
    {
        if (element.Name.LocalName == "text")
            element.SetAttributeValue("class", "label");
        return element;
    }

    private static void Paint(XElement element, string attribute, Func<string, string?> classOf)
    {
        if (element.Attribute(attribute) is not { } colour || classOf(colour.Value) is not { } name)
            return;
        colour.Remove();
        var names = element.Attribute("class")?.Value;
        element.SetAttributeValue("class", names is null ? name : names + " " + name);
    }

    private static string? StrokeClass(XElement element, string colour)
    {
        if (element.Attribute("stroke-opacity") is { } faint && colour != "white")
        {
            faint.Remove();
            return "rule";
        }

        return colour switch
        {
            "white" => "edge",
            "black" => "axis",
            FrontPlot.LineHex => "line",
            _ => null,
        };
    }

    // The library gives a place for every letter of its own font.
    private static void Centre(XElement text)
    {
        var places = (text.Attribute("x")?.Value ?? "0").Split([',', ' '], StringSplitOptions.RemoveEmptyEntries).Select(Number).ToArray();
        var letter = places.Length > 1
            ? (places[^1] - places[0]) / (places.Length - 1)
            : UsualLetter * Number(text.Attribute("font-size")!.Value);
        text.SetAttributeValue("x", ((places[0] + places[^1] + letter) / 2).ToString("R", Plain));
        if (text.Attribute("y") is { } y)
            y.Value = y.Value.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries)[0];
        text.SetAttributeValue("text-anchor", "middle");
        text.Attribute("font-family")?.Remove();
        text.Value = text.Value.Trim();
    }

    private static double Number(string text) => double.Parse(text, Plain);

    [GeneratedRegex(@"\d+\.\d{3,}")]
    private static partial Regex LongFigure();
}
