using DesignSearch.Files;

namespace DesignSearch.Climate;

/// <summary>What the head of a file says, by key; each with the line and column it stands at.</summary>
internal sealed class HeadFacts
{
    private readonly Dictionary<string, (string Text, int Line, int Column)> facts = [];
    private readonly string file;

    public HeadFacts(string file, FormatMap map, IReadOnlyList<string> lines)
    {
        this.file = file;
        foreach (var (key, where) in map.HeadKeys)
        {
            if (Find(map, lines, where) is { } found)
                facts[key] = found;
        }
    }

    public string? Text(string key) => facts.TryGetValue(key, out var fact) && fact.Text is not ("" or "-") ? fact.Text : null;

    /// <summary>A number of the head; a fault when it stands there and is none or lies outside.</summary>
    public double? Number(string key, double low, double high, string expected, FaultList faults)
    {
        if (!facts.TryGetValue(key, out var fact) || fact.Text.Length == 0)
            return null;
        if (PlainNumber.TryRead(fact.Text, out var value) && value >= low && value <= high)
            return value;
        faults.Add(file, fact.Line, fact.Column, fact.Text, expected);
        return null;
    }

    private static (string, int, int)? Find(FormatMap map, IReadOnlyList<string> lines, string where)
    {
        switch (map.Head)
        {
            case HeadKind.Positions when lines.Count > 0:
                var fields = CsvFields.Split(lines[0], ',');
                var index = int.Parse(where, System.Globalization.CultureInfo.InvariantCulture) - 1;
                return index < fields.Count ? (fields[index].Text, 1, fields[index].Column) : null;
            case HeadKind.Labels:
                for (var l = 0; l < Math.Min(lines.Count, 40); l++)
                {
                    var colon = lines[l].IndexOf(':', StringComparison.Ordinal);
                    if (colon > 0 && lines[l][..colon].Trim().Equals(where, StringComparison.OrdinalIgnoreCase))
                        return (lines[l][(colon + 1)..].Trim().TrimEnd(','), l + 1, colon + 2);
                }

                return null;
            case HeadKind.NamesThenValues when lines.Count > 1:
                var at = CsvFields.Split(lines[0], ',').FindIndex(f => f.Text.Equals(where, StringComparison.OrdinalIgnoreCase));
                var values = CsvFields.Split(lines[1], ',');
                return at >= 0 && at < values.Count ? (values[at].Text, 2, values[at].Column) : null;
            default:
                return null;
        }
    }
}
