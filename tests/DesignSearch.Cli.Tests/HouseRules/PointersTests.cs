using System.Text.RegularExpressions;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>Where code or a page sends the reader to a page or a heading, it is there.</summary>
public sealed partial class PointersTests
{
    private static IEnumerable<string> Texts =>
    [
        .. SourceRulesTests.Sources,
        .. Files("tests", "*.cs").Where(f => !f.Contains("/obj/", StringComparison.Ordinal)),
        .. Files("docs", "*.md"),
        .. Files("catalogs", "*.md"),
        Repository.At("README.md"),
        Repository.At("DEVELOPERS.md"),
    ];

    [Fact]
    public void Named_pages_and_headings_are_there()
    {
        var found = Matches(Texts, Named()).Select(n => (n.File, Page: n.Match.Groups["page"].Value, Heading: n.Match.Groups["heading"].Value)).ToList();
        Assert.True(found.Count(n => n.Heading.Length > 0) > 5);
        var wrong = found.Where(n => !IsThere(Repository.At(n.Page), n.Heading)).Select(n => $"{n.File}: {n.Page} {n.Heading}").ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public void Links_lead_somewhere()
    {
        var links = Matches(Texts.Where(f => f.EndsWith(".md", StringComparison.Ordinal)), Link()).Select(l => (l.File, To: l.Match.Groups["to"].Value));
        var wrong = links.Where(l => !l.To.Contains("://", StringComparison.Ordinal) && !Leads(l.File, l.To)).Select(l => $"{l.File}: {l.To}").ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Repository.At(folder), pattern, SearchOption.AllDirectories);

    private static IEnumerable<(string File, Match Match)> Matches(IEnumerable<string> files, Regex what) =>
        files.SelectMany(f => what.Matches(File.ReadAllText(f)).Select(m => (f, m)));

    private static bool IsThere(string page, string heading) => File.Exists(page) && (heading.Length == 0 || Headings(page).Contains(heading));

    private static bool Leads(string from, string link)
    {
        var parts = link.Split('#');
        var page = parts[0].Length == 0 ? from : Path.GetFullPath(Path.Combine(Path.GetDirectoryName(from)!, parts[0]));
        return (File.Exists(page) || Directory.Exists(page)) && (parts.Length == 1 || Headings(page).Any(h => Anchor(h) == parts[1]));
    }

    private static string Anchor(string heading) => NoWord().Replace(heading.ToLowerInvariant(), "").Replace(' ', '-');

    private static IEnumerable<string> Headings(string page) =>
        File.ReadLines(page).Where(l => l.StartsWith('#')).Select(l => l.TrimStart('#').Trim());

    [GeneratedRegex("""\b(?<page>docs/[\w/-]+\.md)(?:, "(?<heading>[^"\n]+)")?""")]
    private static partial Regex Named();

    [GeneratedRegex(@"\]\((?<to>[^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"[^\w\s-]")]
    private static partial Regex NoWord();
}
