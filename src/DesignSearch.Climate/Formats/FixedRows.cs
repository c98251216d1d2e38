using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>Reads rows whose fields stand between fixed characters of the line.</summary>
internal sealed class FixedRows(string file, FormatMap map, string[] lines, FaultList faults)
{
    /// <summary>The rows; lines above them that begin with # are a head of the builder's own.</summary>
    public TableText Read()
    {
        var places = map.Table.Places.ToDictionary(p => p.Name);
        var time = map.TimeColumns[0].Select(t => places[t]).ToArray();
        var fields = map.Fields.Select(f => (Map: f, Place: places[f.Names[0]])).ToArray();
        var last = fields.Select(f => f.Place).Concat(time).Max(p => p.From);
        var table = new TableText(1);
        foreach (var (field, place) in fields)
            table.Fields.Add((field, field.Unit, place.From));
        for (var l = 0; l < lines.Length && faults.Faults.Count < TableReader.MostFaults; l++)
        {
            var line = lines[l];
            if (line.AsSpan().Trim().Length == 0 || line[0] == '#')
                continue;
            if (line.Length < last)
                faults.Add(file, l + 1, 0, line, FormattableString.Invariant($"a row of at least {last} characters; it has {line.Length} (cut short?)"));
            else
                table.Rows.Add(new(l + 1, time[0].From, string.Join(' ', time.Select(t => t.Of(line))), [.. fields.Select(f => f.Map.Of(f.Place.Of(line), ""))]));
        }

        return table;
    }
}
