using System.Globalization;
using DesignSearch.Layouts;

namespace DesignSearch.Reporting;

/// <summary>Names the shopping-list file of a layout.</summary>
internal static class ListFile
{
    /// <summary>Folder of the lists inside a run's folder.</summary>
    public const string Folder = "lists";

    private const int LongestSlug = 80;

    /// <summary>Path inside the run's folder, with a forward slash: <c>lists/3-slug.csv</c>. Whatever the slug says, the file lies in that folder.</summary>
    public static string PathOf(JudgedLayout layout) => Folder + "/" + NameOf(layout);

    /// <summary>Name of the file: <c>3-slug.csv</c>.</summary>
    public static string NameOf(JudgedLayout layout) => string.Create(CultureInfo.InvariantCulture, $"{layout.Rank}-{Safe(layout.Slug)}.csv");

    /// <summary>True for a name that <see cref="NameOf"/> could have made.</summary>
    public static bool IsListName(string name) =>
        name.Split('-', 2) is [var rank, var rest] && rank.Length is > 0 and < 10 && rank.All(char.IsAsciiDigit) && rest.EndsWith(".csv", StringComparison.Ordinal) && rest[..^4] == Safe(rest[..^4]);

    private static string Safe(string slug)
    {
        var safe = new string([.. slug.Take(LongestSlug).Select(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) ? c : '-')]);
        return safe.Length == 0 ? "layout" : safe;
    }
}
