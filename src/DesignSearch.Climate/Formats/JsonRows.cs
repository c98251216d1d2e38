using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>Reads rows out of JSON by the names of their values.</summary>
internal sealed class JsonRows(string file, FormatMap map, JsonTree json, FaultList faults)
{
    /// <summary>The rows; null when the times are missing.</summary>
    public TableText? Read()
    {
        var path = map.Table.Path;
        var names = json.Names(path);
        if (map.TimeColumns.FirstOrDefault(set => set.All(names.Contains)) is not [var timeName])
        {
            faults.Add(file, 1, 0, "", $"times under '{path}' named {string.Join(" or ", map.TimeColumns.Select(t => t[0]))}");
            return null;
        }

        var time = json.Column(path, timeName);
        var (line, _) = time.Count > 0 ? json.PlaceOf(time[0]) : (1, 1);
        var table = new TableText(line) { ColumnOf = row => json.PlaceOf(new(row.Where, 0)).Column };
        var columns = new List<IReadOnlyList<JsonCell>>();
        foreach (var field in map.Fields)
        {
            if (field.Names.FirstOrDefault(n => names.Contains(n)) is not { } name)
            {
                if (field.Needed)
                    faults.Add(file, line, 0, "", $"values '{field.Names[0]}' ({TableColumns.Plain(field.Field)}) under '{path}'");
                continue;
            }

            var column = json.Column(path, name);
            var unit = map.Table.Units.Length > 0 && json.Fact(map.Table.Units + "." + name) is { } said ? json.TextOf(said) : field.Unit;
            if (column.Count != time.Count)
                faults.Add(file, line, 0, "", FormattableString.Invariant($"as many values of '{name}' as there are times; {column.Count} for {time.Count}"));
            table.Fields.Add((field, unit, column.Count > 0 ? json.PlaceOf(column[0]).Column : 0));
            columns.Add(column);
        }

        if (!faults.IsEmpty)
            return null;
        for (var i = 0; i < time.Count; i++)
        {
            var cells = new string[columns.Count];
            for (var c = 0; c < cells.Length; c++)
                cells[c] = table.Fields[c].Map.Of(json.TextOf(columns[c][i]), "");
            table.Rows.Add(new(json.LineOf(time[i]), time[i].Start, json.TextOf(time[i]), cells));
        }

        return table;
    }
}
