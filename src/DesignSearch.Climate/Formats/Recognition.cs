using System.Text.RegularExpressions;

namespace DesignSearch.Climate.Formats;

/// <summary>Finds out which format a file has, and where it has none, which comes nearest.</summary>
internal sealed class Recognition(SourceText source)
{
    private const int HeadLines = 60;
    private const int RowsTried = 5;

    // Spreadsheets save other separators and quotes.
    private readonly string head = source.Json is null ? Plain(string.Join('\n', source.Lines.Take(HeadLines))) : "";

    // The first rows below a head of the builder's own, if there is one.
    private readonly string[] first = [.. source.Lines.Where(l => l.AsSpan().Trim().Length > 0 && l[0] != '#').Take(RowsTried)];

    /// <summary>True when the file is of this format.</summary>
    public bool Is(FormatMap map)
    {
        if (map.Table.Kind == TableKind.Json != source.Json is not null)
            return false;
        if (map.Table.Row.Length > 0)
            return first.Length > 0 && first.All(l => Regex.IsMatch(l, map.Table.Row, FormatMapReader.Patterns)) && map.Detect.All(Shows);
        return map.Detect.Count == 0 ? map.Table.Kind != TableKind.Json && TableColumns.Find(map, source.Lines) is not null : map.Detect.All(Shows);
    }

    /// <summary>The known format that the file shares most with, and what it lacks of it.</summary>
    /// <returns>Nothing when it shares nothing with any.</returns>
    public (FormatMap Map, string Lacks)? Nearest(IReadOnlyList<FormatMap> maps)
    {
        var (map, share, lacks) = maps.Select(m => (Map: m, Shared: Share(m, out var l), Lacks: l)).MaxBy(m => m.Shared);
        return share > 0 ? (map, lacks) : null;
    }

    private double Share(FormatMap map, out string lacks)
    {
        lacks = "";
        if (map.Table.Kind == TableKind.Json != source.Json is not null)
            return 0;
        if (map.Table.Row.Length > 0 && map.Table.Kind != TableKind.Columns)
            return ShareOfRows(map, out lacks);
        string[] wanted =
        [
            .. map.Detect, .. map.TimeColumns[0].Select(InTable), .. map.Fields.Where(f => f.Needed && !f.Names.Any(n => Shows(InTable(n)))).Select(f => InTable(f.Names[0])),
            .. map.Fields.Where(f => f.Needed).SelectMany(f => f.Names.Select(InTable)).Where(Shows),
        ];
        var missing = wanted.Distinct().Where(n => !Shows(n)).ToArray();
        lacks = string.Join(", ", missing.Select(m => $"'{m}'"));
        return (wanted.Distinct().Count() - missing.Length) / (double)wanted.Distinct().Count();

        string InTable(string name) => map.Table.Path.Length == 0 ? name : map.Table.Path + "." + name;
    }

    // Rows without names: their first line has as many fields as the layout, parted otherwise.
    private double ShareOfRows(FormatMap map, out string lacks)
    {
        var names = map.Table.Kind == TableKind.Elements ? map.Table.Names : [.. map.Table.Places.Select(p => p.Name)];
        lacks = map.Table.Kind switch
        {
            TableKind.Elements => "rows of " + string.Join(',', names),
            _ => "rows with " + string.Join(", ", map.Table.Places.Select(p => FormattableString.Invariant($"{p.Name} in characters {p.From} to {p.To}"))),
        };
        if (first.Any(l => Regex.IsMatch(l, map.Table.Row, FormatMapReader.Patterns)))
            return 0.8;
        return first.Any(l => Fields(l) is var n && n > 3 && Math.Abs(n - names.Count) <= 1) ? 0.4 : 0;
    }

    private static int Fields(string line) => line.Split([' ', '\t', ',', ';'], StringSplitOptions.RemoveEmptyEntries).Count(f => f.AsSpan().IndexOfAnyInRange('0', '9') >= 0);

    private bool Shows(string word) => source.Json is { } json ? json.Has(word) : head.Contains(Plain(word), StringComparison.OrdinalIgnoreCase);

    private static string Plain(string text) => text.Replace(';', ',').Replace('\t', ',').Replace("\"", "", StringComparison.Ordinal);
}
