using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Drawings;

/// <summary>A picture of a plant, and the same in words.</summary>
/// <param name="Name">Short name, for its file.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Says">What it says, for who cannot see it, sentence by sentence.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Body">Its lines, signs and words.</param>
/// <param name="Table">The same in tables, for the page.</param>
internal sealed record Picture(
    string Name, string Title, IReadOnlyList<string> Says, double Width, double Height, Markup Body, Markup Table)
{
    private Markup Told => Markup.All(Says.Select(s => Markup.Of($"{s} ")));

    /// <summary>The picture in the page, in the page's own ink.</summary>
    public Markup OnPage() => Markup.Of($"""
        <svg class="scheme" role="img" aria-label="{Title}" xmlns="http://www.w3.org/2000/svg"
        viewBox="0 0 {Width} {Height}"
        width="{Width}" height="{Height}">
        <desc>{Told}</desc>
        {Body}</svg>

        """);

    /// <summary>The picture as a file of its own, black on white.</summary>
    /// <param name="plant">The plant that it is of.</param>
    public string AsFile(string plant) => Markup.Of($"""
        <?xml version="1.0" encoding="utf-8"?>
        <svg class="scheme" role="img" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {Width} {Height}" width="{Width}" height="{Height}">
        <title>{Title}: {plant}</title>
        <desc>DesignSearch picture, format {Format}. {Told}</desc>
        <style>{PictureStyle.OfFile}</style>
        <rect width="{Width}" height="{Height}" fill="#fff"/>
        {Body}</svg>

        """).Text;

    /// <summary>Version of the files.</summary>
    public const int Format = 1;
}
