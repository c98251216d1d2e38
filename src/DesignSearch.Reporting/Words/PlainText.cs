using System.Text.RegularExpressions;
using DesignSearch.Files;

namespace DesignSearch.Reporting.Words;

/// <summary>Makes text from outside fit to be shown: what cannot be seen but changes how a line reads is replaced by a sign that can be seen.</summary>
internal static partial class PlainText
{
    /// <summary>Longest text of one name on the page, in characters.</summary>
    public const int LongestName = 240;

    /// <summary>Longest text of one sentence or paragraph on the page, in characters.</summary>
    public const int LongestSentence = 2000;

    /// <summary>Furthest that a cut goes back to end at a whole word, in characters.</summary>
    private const int LongestWord = 24;

    /// <summary>
    /// A name, cut where it is longer than <see cref="LongestName"/>; a figure in it that has a unit stays on one line with it, and its
    /// thousands stand apart. Other figures are left as they are: they may be the number of a model.
    /// </summary>
    public static string Name(string? text) => ThousandsOfUnit().Replace(UnitGap().Replace(Cut(text, LongestName), "\u00A0"), m => Say.Grouped(m.Value));

    /// <summary>A sentence of a run, set like the page's own: no line ends between a figure and its unit, thousands stand apart, and a minus is one.</summary>
    public static string Sentence(string? text) => Minus().Replace(Thousands().Replace(UnitGap().Replace(Cut(text, LongestSentence), "\u00A0"), m => Say.Grouped(m.Value)), "−");

    /// <summary>Any text, cut to a number of characters with the full count behind it.</summary>
    public static string Cut(string? text, int longest)
    {
        if (string.IsNullOrEmpty(text))
            return "";
        if (text.Length <= longest)
            return Visible(text);
        var end = char.IsHighSurrogate(text[longest - 1]) ? longest - 1 : longest;
        var gap = text.LastIndexOf(' ', end - 1, Math.Min(end, LongestWord));
        end = gap > 0 ? gap : end;
        return Visible(text[..end]) + "… (" + Say.Whole(text.Length) + " characters)";
    }

    /// <summary>The text with control characters, half surrogates and marks that turn the reading direction replaced.</summary>
    public static string Visible(string text) => VisibleText.Of(text.Replace('\n', ' ').Replace('\t', ' '));

    [GeneratedRegex(@"(?<=\d) (?=(?:°C|K·h|kWh|kW|W|K|m²|m³|m|mm|cm|kg|kPa|L|V|A|h|N|Nm|%)(?![\w²³]))")]
    private static partial Regex UnitGap();

    // Four figures or more that stand alone: no part of a date, a range, a standard's number or a decimal.
    [GeneratedRegex(@"(?<![\w.,:/–-])(?<!\b(?:EN|IEC|ISO) )\d{4,}(?=\.\d|[^\w:/–-]|$)")]
    private static partial Regex Thousands();

    // A hyphen that stands before a figure and behind none.
    [GeneratedRegex(@"(?<![\w.,:/–)-])-(?=\d)")]
    private static partial Regex Minus();

    [GeneratedRegex(@"(?<![\w.,:/–-])\d{4,}(?=(?:\.\d+)?\u00A0)")]
    private static partial Regex ThousandsOfUnit();
}
