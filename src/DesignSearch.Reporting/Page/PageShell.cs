using System.Security.Cryptography;
using System.Text;
using DesignSearch.Reporting.Html;

namespace DesignSearch.Reporting.Page;

/// <summary>What every page of a run has about its content: one file that asks no other for anything and reads in full without script.</summary>
internal static class PageShell
{
    /// <summary>Version of the pages' format.</summary>
    public const string Format = "4";

    /// <summary>The style of the pages.</summary>
    public static string StyleSheet { get; } = Resource("report.css");

    private static readonly string Script = Resource("report.js");

    /// <summary>A whole page.</summary>
    /// <param name="title">Title of the window.</param>
    /// <param name="skip">Words of the link that skips to the content.</param>
    /// <param name="programVersion">Version that made it.</param>
    /// <param name="body">Its content, with one element of the identifier "content".</param>
    public static string Of(string title, string skip, string programVersion, Markup body)
    {
        var policy = Markup.Of(
            $"default-src 'none'; img-src data:; style-src '{Hash(StyleSheet)}'; script-src '{Hash(Script)}'; "
                + $"base-uri 'none'; form-action 'none'");
        return Markup.Of($"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{policy}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="generator" content="DesignSearch {programVersion}">
            <meta name="format-version" content="{Format}">
            <link rel="icon" href="data:,">
            <title>{title}</title>
            <style>{new Markup(StyleSheet)}</style>
            </head>
            <body>
            <a class="skip" href="#content">{skip}</a>
            <div class="page">
            {body}
            <footer><p>Made by DesignSearch {programVersion}. A planning aid: local codes and licensed work come first.</p></footer>
            </div>
            <script>{new Markup(Script)}</script>
            </body>
            </html>

            """).Text;
    }

    private static string Hash(string text) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static string Resource(string name)
    {
        using var reader = new StreamReader(typeof(PageShell).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
