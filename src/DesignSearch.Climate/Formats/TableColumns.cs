using DesignSearch.Climate.Weather;
using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>Where the columns of a format stand in one file.</summary>
internal sealed class TableColumns
{
    private TableColumns(int line, char delimiter, List<(string Text, int Column)> names, int[] time)
    {
        (Line, Delimiter, Names, Time) = (line, delimiter, names, time);
    }

    /// <summary>Index of the line of names.</summary>
    public int Line { get; }

    public char Delimiter { get; }

    public IReadOnlyList<(string Text, int Column)> Names { get; }

    /// <summary>Fields that make the stamp.</summary>
    public int[] Time { get; }

    /// <summary>Columns of the fields, and of their flags; −1 where a field has none.</summary>
    public List<(FieldMap Map, int Index, int Flags, string Unit)> Fields { get; } = [];

    /// <summary>Finds the line of names; nothing when there is none.</summary>
    public static TableColumns? Find(FormatMap map, IReadOnlyList<string> lines)
    {
        for (var l = 0; l < Math.Min(lines.Count, 200); l++)
        {
            foreach (var delimiter in ",;\t")
            {
                if (!lines[l].Contains(delimiter))
                    continue;
                var names = CsvFields.Split(lines[l], delimiter);
                foreach (var set in map.TimeColumns)
                {
                    var time = set.Select(t => names.FindIndex(n => Same(n.Text, t) || Same(Parts(n.Text).Name, t))).ToArray();
                    if (Array.TrueForAll(time, t => t >= 0) && HasNeeded(map, names))
                        return new(l, delimiter, names, time);
                }
            }
        }

        return null;
    }

    /// <summary>Finds the columns of the fields; one that is needed and missing is a fault.</summary>
    public void FindFields(FormatMap map, IReadOnlyList<string> lines, string file, FaultList faults)
    {
        foreach (var field in map.Fields)
        {
            var index = IndexOf(field, Names);
            if (index >= 0)
                Fields.Add((field, index, field.FlagColumn.Length == 0 ? index : IndexOf(field.FlagColumn), UnitOf(field, map, Names[index].Text, lines)));
            else if (field.Needed)
                faults.Add(file, Line + 1, 0, "", FormattableString.Invariant($"a column '{field.Names[0]}' ({Plain(field.Field)})"));
        }
    }

    // A format that knows itself by its columns alone must show the ones it needs.
    private static bool HasNeeded(FormatMap map, IReadOnlyList<(string Text, int Column)> names) =>
        map.Detect.Count > 0 || map.Fields.Where(f => f.Needed).All(f => IndexOf(f, names) >= 0);

    private static int IndexOf(FieldMap field, IReadOnlyList<(string Text, int Column)> names)
    {
        foreach (var name in field.Names)
        {
            for (var i = 0; i < names.Count; i++)
            {
                if (Same(names[i].Text, name) || Same(Parts(names[i].Text).Name, name))
                    return i;
            }
        }

        return -1;
    }

    private static string UnitOf(FieldMap field, FormatMap map, string name, IReadOnlyList<string> lines) =>
        Parts(name).Unit ?? UnitInHead(map, name, lines) ?? UnitInName(name) ?? field.Unit;

    /// <summary>Index of a column by its name; −1 when there is none.</summary>
    public int IndexOf(string name) => Names.ToList().FindIndex(n => Same(n.Text, name));

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private static (string Name, string? Unit) Parts(string text)
    {
        var bracket = text.LastIndexOf('(');
        return bracket > 0 && text.EndsWith(')')
            ? (
                text[..bracket].Trim(),
                WeatherUnit.Find(text[(bracket + 1)..^1], 1) is null && text[bracket - 1] != ' ' ? null : text[(bracket + 1)..^1])
            : (text, null);
    }

    // Some providers list the columns with their units above the table: "NAME   words (unit)", or a column "NAME Units" of the head.
    private static string? UnitInHead(FormatMap map, string name, IReadOnlyList<string> lines)
    {
        if (map.Head == HeadKind.NamesThenValues)
            return HeadFacts.Named(lines, name + " Units") is { } unit && WeatherUnit.Find(unit.Text, 1) is not null ? unit.Text : null;
        var line = lines.Take(60).Select(l => l.Trim().TrimEnd(',', ';')).FirstOrDefault(l => l.StartsWith(name + " ", StringComparison.OrdinalIgnoreCase) && l.EndsWith(')'));
        return line?[(line.LastIndexOf('(') + 1)..^1];
    }

    private static string? UnitInName(string name) => name.Equals("Fahrenheit", StringComparison.OrdinalIgnoreCase) ? "F" : null;

    /// <summary>A field in words.</summary>
    public static string Plain(WeatherField field) => field switch
    {
        WeatherField.Air => "air temperature",
        WeatherField.Global => "global irradiance on the level",
        WeatherField.High => "daily high",
        WeatherField.Low => "daily low",
        _ => field.ToString(),
    };
}
