using System.Buffers;
using System.Text;

namespace DesignSearch.Files;

/// <summary>
/// Text fit to be shown, whoever wrote it: what cannot be seen but would change how a line reads or what a terminal does is replaced by a
/// sign that can be seen. Everything that goes to a console, a page, a table or a picture passes here.
/// </summary>
public static class VisibleText
{
    /// <summary>Stands for a sign that cannot be shown.</summary>
    public const char Replacement = '\uFFFD';

    private static readonly SearchValues<char> Suspect =
        SearchValues.Create([.. Enumerable.Range(0, 0x10000).Select(c => (char)c).Where(c => char.IsSurrogate(c) || IsHidden(new Rune(c)))]);

    /// <summary>The text with controls, half surrogates and marks that turn the direction of reading replaced.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="keep">Control characters that are left, for instance line ends.</param>
    public static string Of(string text, string keep = "")
    {
        if (!text.AsSpan().ContainsAny(Suspect))
            return text;
        var shown = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.IsBmp && keep.Contains((char)rune.Value, StringComparison.Ordinal))
                shown.Append((char)rune.Value);
            else if (IsHidden(rune))
                shown.Append(Replacement);
            else
                shown.Append(rune.ToString());
        }

        return shown.ToString();
    }

    /// <summary>True for controls, for what has no width, and for what turns the direction of reading.</summary>
    public static bool IsHidden(Rune rune) =>
        Rune.IsControl(rune)
        || rune.Value is 0x061C or (>= 0x200B and <= 0x200F) or (>= 0x2028 and <= 0x202E) or (>= 0x2060 and <= 0x206F) or 0xFEFF or (>= 0xFFF9 and <= 0xFFFB) or 0xFFFE or 0xFFFF
            or (>= 0xE0000 and <= 0xE007F);
}
