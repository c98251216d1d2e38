using System.Globalization;
using System.Text.RegularExpressions;
using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>What the head of a file says, by key; each with the line and column it stands at.</summary>
internal sealed class HeadFacts
{
    private const int HeadLines = 40;
    private readonly Dictionary<string, (string Text, int Line, int Column)> facts = [];
    private readonly HashSet<string> told = [];
    private readonly string file;

    public HeadFacts(string file, FormatMap map, SourceText source)
    {
        this.file = file;
        var columns = map.Head is HeadKind.Positions or HeadKind.FirstRow ? TableColumns.Find(map, source.Lines) : null;
        foreach (var (key, where) in map.HeadKeys)
        {
            if (Find(map.Head, source, columns, where) is { } found)
                facts[key] = found;
        }
    }

    public string? Text(string key) => facts.TryGetValue(key, out var fact) && fact.Text is not ("" or "-") ? fact.Text : null;

    /// <summary>A number of the head; a fault when it stands there and is none or lies outside.</summary>
    public double? Number(string key, double low, double high, string expected, FaultList faults)
    {
        if (!facts.TryGetValue(key, out var fact) || fact.Text.Length == 0)
            return null;
        if (PlainNumber.TryRead(fact.Text.Contains('.') ? fact.Text : fact.Text.Replace(',', '.'), out var value) && value >= low && value <= high)
            return value;
        Fault(key, expected, faults);
        return null;
    }

    /// <summary>Reports a fault at a key that is there; once, however often it is asked for.</summary>
    public void Fault(string key, string expected, FaultList faults)
    {
        if (!told.Add(key))
            return;
        var fact = facts[key];
        faults.Add(file, fact.Line, fact.Column, fact.Text, expected);
    }

    private static (string, int, int)? Find(HeadKind kind, SourceText source, TableColumns? columns, string where) => kind switch
    {
        HeadKind.Positions when columns?.Line != 0 => At(source.Lines, 0, int.Parse(where, CultureInfo.InvariantCulture) - 1),
        HeadKind.NamesThenValues => Named(source.Lines, where),
        HeadKind.Labels => Labelled(source.Lines, where),
        HeadKind.Patterns => Matched(source.Lines, where),
        HeadKind.FirstRow when columns is not null && columns.Line + 1 < source.Lines.Length => At(source.Lines, columns.Line + 1, columns.IndexOf(where)),
        HeadKind.Paths when source.Json?.Fact(where) is { } cell => (source.Json.TextOf(cell), source.Json.PlaceOf(cell).Line, source.Json.PlaceOf(cell).Column),
        _ => null,
    };

    /// <summary>The value in the second line under a name in the first.</summary>
    public static (string Text, int Line, int Column)? Named(IReadOnlyList<string> lines, string name) => lines.Count < 2 ? null
        : At(lines, 1, CsvFields.Split(lines[0], CsvFields.DelimiterOf(lines[0])).FindIndex(f => f.Text.Equals(name, StringComparison.OrdinalIgnoreCase)));

    private static (string, int, int)? At(IReadOnlyList<string> lines, int line, int index)
    {
        var fields = CsvFields.Split(lines[line], CsvFields.DelimiterOf(lines[line]));
        return index >= 0 && index < fields.Count ? (fields[index].Text, line + 1, fields[index].Column) : null;
    }

    private static (string, int, int)? Labelled(string[] lines, string label)
    {
        for (var l = 0; l < Math.Min(lines.Length, HeadLines); l++)
        {
            var colon = lines[l].IndexOf(':', StringComparison.Ordinal);
            if (colon > 0 && lines[l][..colon].Trim(' ', '#', '"', '\t').Equals(label, StringComparison.OrdinalIgnoreCase))
                return (lines[l][(colon + 1)..].Trim(' ', '\t', ',', ';', '"'), l + 1, colon + 2);
        }

        return null;
    }

    private static (string, int, int)? Matched(string[] lines, string pattern)
    {
        for (var l = 0; l < Math.Min(lines.Length, HeadLines); l++)
        {
            var match = Regex.Match(lines[l], pattern, FormatMapReader.Patterns);
            if (match.Success)
                return (match.Groups[1].Value, l + 1, match.Groups[1].Index + 1);
        }

        return null;
    }
}
