using System.Globalization;
using System.Text;
using DesignSearch.Files;

namespace DesignSearch.Layouts.Design.Choices;

/// <summary>A layout as a file: TOML with the keys of a scenario's [choices], one value each.</summary>
public static class LayoutFile
{
    /// <summary>Version of the format.</summary>
    public const int Format = 1;

    /// <summary>Writes a layout; only the choices that matter for it are written.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="title">A line of comment at its head.</param>
    public static string Write(Layout layout, string title)
    {
        var text = new StringBuilder();
        // The parser of TOML takes the sign for what cannot be shown as half a letter, also in a comment: a blank stands for it here.
        text.Append("# ").Append(VisibleText.Of(title).Replace(VisibleText.Replacement, ' ')).Append('\n');
        text.Append("format = ").Append(Format.ToString(CultureInfo.InvariantCulture)).Append("\n\n[choices]\n");
        foreach (var (choice, value) in layout.Awake)
            text.Append(choice.Key).Append(" = ").Append(choice is PartChoice ? '"' + value.Id + '"' : value.ToString()).Append('\n');
        return text.ToString();
    }
}
