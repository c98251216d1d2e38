using System.Globalization;
using System.Xml.Linq;
using DesignSearch.Reporting.Words;

namespace DesignSearch.Reporting.Front;

/// <summary>Turns the chart library's SVG into one that scales, has a title a screen reader can speak, and comes out the same each time.</summary>
internal static class SvgFile
{
    private const string FontStack = "DejaVu Sans, Verdana, Geneva, sans-serif";

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>The cleaned file.</summary>
    /// <param name="raw">What the chart library wrote.</param>
    /// <param name="prefix">Start of every identifier in the file.</param>
    /// <param name="title">Title, one sentence.</param>
    /// <param name="description">What is drawn.</param>
    /// <param name="format">Kind and version of the file.</param>
    public static string Clean(string raw, string prefix, string title, string description, string format)
    {
        var root = XDocument.Parse(raw).Root!;
        root.SetAttributeValue("viewBox", $"0 0 {root.Attribute("width")!.Value} {root.Attribute("height")!.Value}");
        root.Attribute("width")!.Remove();
        root.Attribute("height")!.Remove();
        root.SetAttributeValue("role", "img");
        root.SetAttributeValue("aria-labelledby", prefix + "-title");
        root.SetAttributeValue("aria-describedby", prefix + "-text");
        RenameClips(root, prefix);
        foreach (var text in root.Descendants(Svg + "text"))
            OnePlaceEach(text);
        root.AddFirst(
            new XElement(Svg + "title", new XAttribute("id", prefix + "-title"), PlainText.Visible(title)),
            new XElement(Svg + "desc", new XAttribute("id", prefix + "-text"), PlainText.Visible(description)),
            new XElement(Svg + "metadata", format));
        return root.ToString(SaveOptions.DisableFormatting) + "\n";
    }

    // The library counts clip paths over the life of the process.
    private static void RenameClips(XElement root, string prefix)
    {
        var names = new Dictionary<string, string>();
        foreach (var clip in root.Descendants(Svg + "clipPath"))
        {
            var old = clip.Attribute("id")!.Value;
            names[$"url(#{old})"] = string.Create(CultureInfo.InvariantCulture, $"url(#{prefix}-clip-{names.Count + 1})");
            clip.SetAttributeValue("id", names[$"url(#{old})"][5..^1]);
        }

        foreach (var user in root.Descendants().Attributes("clip-path"))
            user.Value = names.GetValueOrDefault(user.Value, user.Value);
    }

    // One x per letter shifts labels in browsers with another font; one x and a length do not.
    private static void OnePlaceEach(XElement text)
    {
        var places = (text.Attribute("x")?.Value ?? "").Split([',', ' '], StringSplitOptions.RemoveEmptyEntries);
        if (places.Length > 0)
            text.SetAttributeValue("x", places[0]);
        if (places.Length > 1)
        {
            var first = double.Parse(places[0], CultureInfo.InvariantCulture);
            var last = double.Parse(places[^1], CultureInfo.InvariantCulture);
            text.SetAttributeValue("textLength", ((last - first) * places.Length / (places.Length - 1)).ToString("0.##", CultureInfo.InvariantCulture));
        }

        if (text.Attribute("y") is { } y)
            y.Value = y.Value.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries)[0];
        text.SetAttributeValue("font-family", FontStack);
    }
}
