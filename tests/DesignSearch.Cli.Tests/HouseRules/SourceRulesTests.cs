using System.Text.RegularExpressions;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Cli.Tests;

/// <summary>Rules of the house that no analyser knows.</summary>
public sealed partial class SourceRulesTests
{
    private const int LongestLineOfWords = 140;
    private const int LongestLine = 180;
    private const int LeastFilesOfWords = 10;

    internal static IEnumerable<string> Sources => Directory.EnumerateFiles(Repository.At("src"), "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    [Fact]
    public void One_public_type_a_file_and_the_file_is_named_after_it()
    {
        var wrong = new List<string>();
        foreach (var file in Sources)
        {
            var types = PublicType().Matches(File.ReadAllText(file)).Select(m => m.Groups["name"].Value).Distinct().ToList();
            if (types.Count > 1 || (types.Count == 1 && types[0] != Path.GetFileName(file).Split('.')[0]))
                wrong.Add($"{Path.GetRelativePath(Repository.Root, file)}: {string.Join(", ", types)}");
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void No_file_is_too_long_to_live_in()
    {
        Assert.DoesNotContain(Sources.Select(f => (File: Path.GetRelativePath(Repository.Root, f), Lines: File.ReadLines(f).Count())), f => f.Lines > 500);
    }

    // Sentences for people stand in files of words, where they can be read over; anything longer than a line there is hard to read over.
    [Fact]
    public void Lines_of_words_are_short()
    {
        var words = Sources.Where(f => Path.GetFileNameWithoutExtension(f).EndsWith("Words", StringComparison.Ordinal)).ToList();
        Assert.True(words.Count > LeastFilesOfWords, $"only {words.Count} files of words");
        Assert.Empty(words.SelectMany(f => TooLong(f, LongestLineOfWords)));
    }

    [Fact]
    public void No_line_is_too_long_to_read() => Assert.Empty(Sources.SelectMany(f => TooLong(f, LongestLine)));

    // Two words and a blank between them are for a person to read: a file of words beside the engineering is their place.
    [Theory]
    [InlineData("Assess")]
    [InlineData("Decide")]
    [InlineData("Design/Wiring")]
    public void Sentences_stand_apart_from_engineering(string folder)
    {
        var under = Repository.At("src", "DesignSearch.Layouts", folder);
        var engineering = Sources
            .Where(f => f.StartsWith(under, StringComparison.Ordinal))
            .Where(f => !Path.GetFileNameWithoutExtension(f).EndsWith("Words", StringComparison.Ordinal))
            .ToList();
        Assert.NotEmpty(engineering);
        Assert.Empty(engineering.SelectMany(f => File.ReadLines(f)
            .Where(l => !l.TrimStart().StartsWith("//", StringComparison.Ordinal))
            .Where(l => Text().Matches(l).Any(m => Phrase().IsMatch(m.Value)))
            .Select(l => $"{Path.GetRelativePath(Repository.Root, f)}: {l.Trim()}")));
    }

    [Fact]
    public void Below_the_command_line_nothing_reads_the_clock_or_draws_unseeded_numbers()
    {
        var cli = Repository.At("src", "DesignSearch.Cli");
        Assert.DoesNotContain(Sources, f => !f.StartsWith(cli, StringComparison.Ordinal) && ClockOrChance().IsMatch(File.ReadAllText(f)));
    }

    // Weather is asked for in one place, and only where a person says so.
    [Fact]
    public void Only_the_download_speaks_to_a_network()
    {
        var download = Repository.At("src", "DesignSearch.Cli", "Download");
        var speakers = Sources.Where(f => Network().IsMatch(File.ReadAllText(f))).Select(f => Path.GetRelativePath(download, f)).ToList();
        Assert.Equal(["PvgisService.cs"], speakers);
    }

    private static IEnumerable<string> TooLong(string file, int most) => File.ReadLines(file)
        .Select((line, i) => (line, i)).Where(l => l.line.Length > most).Select(l => $"{Path.GetRelativePath(Repository.Root, file)}:{l.i + 1} has {l.line.Length}");

    [GeneratedRegex(@"^public (?:(?:sealed|static|abstract|readonly|partial|ref|unsafe) )*(?:class|record struct|record|struct|interface|enum|delegate \S+) (?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();

    [GeneratedRegex("""
        "(?:[^"\\]|\\.)*"
        """)]
    private static partial Regex Text();

    [GeneratedRegex("[a-z}],? [a-z{]")]
    private static partial Regex Phrase();

    [GeneratedRegex(@"\bSystem\.Net\b|\b(HttpClient|TcpClient|TcpListener)\b|new Socket\(")]
    private static partial Regex Network();

    [GeneratedRegex(@"DateTime(Offset)?\.(Utc)?(Now|Today)|Stopwatch|Environment\.TickCount|Random\.Shared|new Random\(\)|Guid\.NewGuid|TimeProvider\.System")]
    private static partial Regex ClockOrChance();
}
