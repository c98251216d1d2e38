using System.Text;

namespace DesignSearch.Reporting;

/// <summary>Makes text from outside fit to be shown: what cannot be seen but changes how a line reads is replaced by a sign that can be seen.</summary>
internal static class PlainText
{
    /// <summary>Longest text of one name on the page, in characters.</summary>
    public const int LongestName = 160;

    /// <summary>Longest text of one sentence or paragraph on the page, in characters.</summary>
    public const int LongestSentence = 2000;

    private const char Replacement = '\uFFFD';

    /// <summary>A name, cut where it is longer than <see cref="LongestName"/>.</summary>
    public static string Name(string? text) => Cut(text, LongestName);

    /// <summary>Any text, cut to a number of characters with the full count behind it.</summary>
    public static string Cut(string? text, int longest)
    {
        if (string.IsNullOrEmpty(text))
            return "";
        if (text.Length <= longest)
            return Visible(text);
        var end = char.IsHighSurrogate(text[longest - 1]) ? longest - 1 : longest;
        return Visible(text[..end]) + "… (" + Say.Whole(text.Length) + " characters)";
    }

    /// <summary>The text with control characters, half surrogates and marks that turn the reading direction replaced.</summary>
    public static string Visible(string text)
    {
        var shown = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value is '\n' or '\t')
                shown.Append(' ');
            else if (IsHidden(rune))
                shown.Append(Replacement);
            else
                shown.Append(rune.ToString());
        }

        return shown.ToString();
    }

    private static bool IsHidden(Rune rune) =>
        Rune.IsControl(rune) || rune.Value is 0x061C or (>= 0x200B and <= 0x200F) or (>= 0x2028 and <= 0x202E) or (>= 0x2060 and <= 0x206F) or 0xFEFF or 0xFFFE or 0xFFFF;
}
