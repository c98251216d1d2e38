using System.Text.RegularExpressions;

namespace DesignSearch.Files.Toml;

/// <summary>Goes through the lines that stand for themselves, tells what is wrong with each in plain words, and leaves a text that the parser reads.</summary>
/// <param name="lines">The text; what was told is taken out of it.</param>
/// <param name="file">How messages name it.</param>
/// <param name="faults">Takes every fault.</param>
/// <param name="broken">Takes the lines that were taken out, from 1, with their keys.</param>
internal sealed partial class TomlLines(string[] lines, string file, FaultList faults, SortedDictionary<int, string> broken)
{
    private readonly Dictionary<string, int> headings = new(StringComparer.Ordinal);
    private readonly List<TomlSpare> spares = [];
    private int told;

    /// <summary>True where so much is wrong that the rest need not be read.</summary>
    public bool IsHopeless => told > FaultList.MostKept;

    /// <summary>Does it.</summary>
    /// <param name="singles">The lines, by index.</param>
    /// <returns>Tables that stand in for headings which cannot be used.</returns>
    public List<TomlSpare> Tell(IEnumerable<int> singles)
    {
        foreach (var at in singles.Where(i => lines[i].Length > 0))
        {
            if (Heading().Match(lines[at]) is { Success: true } heading)
                TellHeading(at, heading.Groups["name"].Value.Trim());
            else if (told <= FaultList.MostKept && !IsRight(lines[at]) && TomlLine.Explain(lines[at]) is var (column, expected))
                TellLine(at, column, expected);
        }

        return spares;
    }

    private static bool IsRight(string line) => TomlLine.IsPlain(line) || TomlReader.IsReadable(line);

    private void TellHeading(int at, string name)
    {
        if (headings.TryAdd(name, at + 1))
            return;
        told++;
        faults.Add(file, at + 1, 0, $"[{name}]", TomlWords.HeadingTwice($"[{name}]", headings[name]));
        StandIn(at, name);
    }

    private void TellLine(int at, int column, string expected)
    {
        told++;
        faults.Add(file, at + 1, column, lines[at].Trim(), expected);
        if (OpenHeading().Match(lines[at]) is { Success: true } open)
        {
            // Meant as a heading, and taken as one.
            var name = open.Groups["name"].Value;
            lines[at] = open.Groups["signs"].Length == 1 ? $"[{name}]" : $"[[{name}]]";
        }
        else if (lines[at].TrimStart().StartsWith('['))
        {
            StandIn(at, string.Concat(lines[at].Where(c => char.IsLetterOrDigit(c) || c is '_' or '-' or '.')));
        }
        else
        {
            broken.TryAdd(at + 1, Meant().Match(lines[at]).Groups["key"].Value.Trim().Replace(' ', '_'));
            lines[at] = "";
        }
    }

    private void StandIn(int at, string heading)
    {
        // The rest is only counted.
        if (spares.Count > FaultList.MostKept)
        {
            lines[at] = "";
            return;
        }

        var spare = new TomlSpare(FormattableString.Invariant($"?{at + 1}"), heading);
        spares.Add(spare);
        lines[at] = $"[\"{spare.Name}\"]";
    }

    [GeneratedRegex(@"^\s*\[\s*(?<name>[\w-]+(\s*\.\s*[\w-]+)*)\s*\]\s*(#.*)?$", RegexOptions.NonBacktracking)]
    private static partial Regex Heading();

    // A key that is written with blanks, with another sign behind it or with none.
    [GeneratedRegex("""^\s*"?(?<key>[\w-]+( [\w-]+)*?)"?\s*(=|:|\s["'\d+-]|$)""", RegexOptions.NonBacktracking)]
    private static partial Regex Meant();

    [GeneratedRegex(@"^\s*(?<signs>\[{1,2})\s*(?<name>[A-Za-z][\w.-]*)\s*\]?\s*(#.*)?$", RegexOptions.NonBacktracking)]
    private static partial Regex OpenHeading();
}
