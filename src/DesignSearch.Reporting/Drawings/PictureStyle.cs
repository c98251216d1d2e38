using DesignSearch.Reporting.Html;
using DesignSearch.Reporting.Page;

namespace DesignSearch.Reporting.Drawings;

/// <summary>How the lines of a picture look in a file: as on the page, in black on white.</summary>
internal static class PictureStyle
{
    private const string Of = ".scheme";

    /// <summary>The page's own rules for pictures, with black for ink and white for the sheet.</summary>
    public static Markup OfFile { get; } = new(string.Join(
        '\n',
        PageShell.StyleSheet.Split('\n')
            .Where(l => l.StartsWith(Of, StringComparison.Ordinal))
            .Select(l => l.Replace("var(--ink)", "#000", StringComparison.Ordinal))
            .Select(l => l.Replace("var(--sheet)", "#fff", StringComparison.Ordinal))
            .Prepend(".scheme text { font-family: \"DejaVu Sans\", Verdana, sans-serif; }")));
}
