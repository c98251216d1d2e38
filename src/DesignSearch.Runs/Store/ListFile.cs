using System.Globalization;
using DesignSearch.Layouts.Decide.Judging;

namespace DesignSearch.Runs.Store;

/// <summary>Names the files of a ranked layout: its shopping list and the layout itself.</summary>
public static class ListFile
{
    /// <summary>Folder of the lists inside a run's folder.</summary>
    public const string Folder = "lists";

    private const int LongestSlug = 80;
    private const string ListEnding = ".csv";
    private const string LayoutEnding = ".toml";

    /// <summary>Path of the shopping list inside the run's folder, with a forward slash: <c>lists/3-slug.csv</c>. Whatever the slug says, the file lies in that folder.</summary>
    public static string PathOf(JudgedLayout layout) => Folder + "/" + NameOf(layout);

    /// <summary>Name of the shopping list: <c>3-slug.csv</c>.</summary>
    public static string NameOf(JudgedLayout layout) => Stem(layout) + ListEnding;

    /// <summary>Name of the layout file: <c>3-slug.toml</c>.</summary>
    public static string LayoutNameOf(JudgedLayout layout) => Stem(layout) + LayoutEnding;

    private static string Stem(JudgedLayout layout) => string.Create(CultureInfo.InvariantCulture, $"{layout.Rank}-{Safe(layout.Slug)}");

    private static string Safe(string slug)
    {
        var safe = new string([.. slug.Take(LongestSlug).Select(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) ? c : '-')]);
        return safe.Length == 0 ? "layout" : safe;
    }
}
