using DesignSearch.Files;

namespace DesignSearch.Climate;

/// <summary>Reads the rows of a weather file by the names of its columns.</summary>
internal sealed class TableReader(string file, FormatMap map, IReadOnlyList<string> lines, FaultList faults)
{
    /// <summary>Year that typical years are written in; neither it nor its neighbours are leap years.</summary>
    public const int NominalYear = 2001;

    private const int MostFaults = 20;

    /// <summary>The rows; faults go to the list, and with any of them the table must not be used.</summary>
    public SourceTable Read()
    {
        var head = FindHead();
        if (head < 0)
        {
            faults.Add(file, 0, 0, "", "a line of column names with " + string.Join(", ", map.TimeColumns));
            return new() { Stamps = [], Lines = [], Values = [] };
        }

        var names = CsvFields.Split(lines[head], ',');
        var time = map.TimeColumns.Select(t => names.FindIndex(n => Same(n.Text, t))).ToArray();
        var columns = FindColumns(names, head + 1);
        var (stamps, rowLines) = (new List<DateTime>(), new List<int>());
        var values = columns.ToDictionary(c => c.Map.Field, _ => new List<double>());
        var clock = new RowClock(map);
        for (var l = head + 1; l < lines.Count && !IsBlank(lines[l]) && faults.Faults.Count < MostFaults; l++)
        {
            var fields = CsvFields.Split(lines[l], ',');
            if (ReadStamp(clock, fields, time, l + 1) is not { } stamp)
                continue;
            stamps.Add(stamp);
            rowLines.Add(l + 1);
            foreach (var (column, index, _) in columns)
                values[column.Field].Add(ReadValue(fields, index, column.Needed, l + 1));
        }

        if (stamps.Count < 2)
            faults.Add(file, head + 1, 0, "", "rows of data below the column names");
        var step = TimeSteps.UsualMinutes(stamps) / 60.0;
        foreach (var (column, index, unit) in columns)
            Convert(values[column.Field], unit, step, head + 1, names[index].Column);
        return new() { Stamps = [.. stamps], Lines = [.. rowLines], Values = values.ToDictionary(v => v.Key, v => v.Value.ToArray()) };
    }

    private static bool IsBlank(string line) => line.AsSpan().Trim(", ;\t\r").Length == 0;

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private int FindHead()
    {
        for (var l = 0; l < lines.Count; l++)
        {
            var names = CsvFields.Split(lines[l], ',');
            if (map.TimeColumns.All(t => names.Exists(n => Same(n.Text, t))))
                return l;
        }

        return -1;
    }

    private List<(FieldMap Map, int Index, string Unit)> FindColumns(List<(string Text, int Column)> names, int line)
    {
        var found = new List<(FieldMap, int, string)>();
        foreach (var field in map.Fields)
        {
            var index = names.FindIndex(n => field.Names.Any(f => Same(n.Text, f) || Same(WithoutUnit(n.Text).Name, f)));
            if (index >= 0)
                found.Add((field, index, WithoutUnit(names[index].Text).Unit ?? field.Unit));
            else if (field.Needed)
                faults.Add(file, line, 0, "", FormattableString.Invariant($"a column '{field.Names[0]}' ({Plain(field.Field)})"));
        }

        return found;
    }

    private static (string Name, string? Unit) WithoutUnit(string text)
    {
        var bracket = text.LastIndexOf(" (", StringComparison.Ordinal);
        return bracket > 0 && text.EndsWith(')') ? (text[..bracket].Trim(), text[(bracket + 2)..^1]) : (text, null);
    }

    private static string Plain(WeatherField field) => field switch
    {
        WeatherField.Air => "air temperature",
        WeatherField.Global => "global irradiance on the level",
        _ => field.ToString(),
    };

    private DateTime? ReadStamp(RowClock clock, List<(string Text, int Column)> fields, int[] time, int line)
    {
        var text = string.Join(' ', time.Where(i => i < fields.Count).Select(i => fields[i].Text));
        if (time.All(i => i < fields.Count) && clock.TryRead(text, out var stamp))
            return stamp;
        faults.Add(file, line, time[0] < fields.Count ? fields[time[0]].Column : 0, text, "a date and time as " + map.TimePattern);
        return null;
    }

    private double ReadValue(List<(string Text, int Column)> fields, int index, bool needed, int line)
    {
        if (index >= fields.Count)
        {
            if (needed)
                faults.Add(file, line, 0, "", "as many fields as there are column names: the row ends early");
            return double.NaN;
        }

        var (text, column) = fields[index];
        if (text.Length == 0 || text.ToLowerInvariant() is "nan" or "na" or "n/a" or "null" or "-")
            return double.NaN;
        if (PlainNumber.TryRead(text, out var value))
            return map.MissingCodes.Contains(value) ? double.NaN : value;
        faults.Add(file, line, column, text, "a number with a decimal point");
        return double.NaN;
    }

    private void Convert(List<double> values, string unit, double stepHours, int line, int column)
    {
        if (WeatherUnit.Find(unit, stepHours) is not { } rule)
        {
            faults.Add(file, line, column, unit, "a unit such as °C, °F, K, W/m², kJ/m², m/s, km/h, mph or %");
            return;
        }

        for (var i = 0; i < values.Count; i++)
            values[i] = values[i] * rule.Factor + rule.Offset;
    }
}
