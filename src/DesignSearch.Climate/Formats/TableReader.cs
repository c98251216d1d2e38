using DesignSearch.Climate.Weather;
using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>Reads the rows of a weather file by the names of its columns.</summary>
internal sealed class TableReader(string file, FormatMap map, YearKind years, IReadOnlyList<string> lines, FaultList faults)
{
    /// <summary>Year that typical years are written in; neither it nor its neighbours are leap years.</summary>
    public const int NominalYear = 2001;

    private const int MostFaults = 8;
    private int next;
    private int wordCells;
    private (string Text, int Line) firstWord;

    /// <summary>The rows; faults go to the list, and with any of them the table must not be used.</summary>
    /// <param name="repairs">Takes sentences about single cells.</param>
    public SourceTable Read(List<string> repairs)
    {
        if (TableColumns.Find(map, lines) is not { } columns)
        {
            faults.Add(file, 1, 0, "", "a line of column names with " + string.Join(", ", map.TimeColumns[0]));
            return SourceTable.Empty;
        }

        columns.FindFields(map, lines, file, faults);
        var rows = ReadRows(columns);
        if (rows.Stamps.Count < 2 && faults.IsEmpty)
            faults.Add(file, columns.Line + 1, 0, "", "two rows of data or more below the column names");
        if (!faults.IsEmpty)
            return SourceTable.Empty;
        if (wordCells > 0)
            repairs.Add(FormattableString.Invariant($"{wordCells} cells hold no number, the first '{firstWord.Text}' in line {firstWord.Line}; they were taken as gaps."));
        if (map.CivilClock && CivilClock.ToStandard(rows.Stamps) is { } sentence)
            repairs.Add(sentence);
        var step = TimeSteps.UsualMinutes(rows.Stamps) / 60.0;
        foreach (var (field, index, unit) in columns.Fields)
            Convert(rows.Values[field.Field], unit, step, columns.Line + 1, columns.Names[index].Column);
        return new()
        {
            Stamps = [.. rows.Stamps],
            Lines = [.. rows.Lines],
            IsTypical = rows.Clock.IsTypical,
            Years = rows.Clock.Years,
            Values = rows.Values.ToDictionary(v => v.Key, v => v.Value.ToArray()),
        };
    }

    // A blank line ends the table unless more rows of the same kind follow.
    private bool Ends(int line, TableColumns columns)
    {
        if (!IsBlank(lines[line]))
            return false;
        // Looked for once for all the lines of a gap.
        if (next <= line)
            next = line + 1;
        while (next < lines.Count && IsBlank(lines[next]))
            next++;
        if (next == lines.Count)
            return true;
        var fields = CsvFields.Split(lines[next], columns.Delimiter);
        var last = columns.Fields.Select(f => f.Index).Concat(columns.Time).Max();
        return fields.Count <= last || fields[columns.Time[0]].Text is not [>= '0' and <= '9', ..];
    }

    private static bool IsBlank(string line) => line.AsSpan().Trim(", ;\t\r").Length == 0;

    private (List<DateTime> Stamps, List<int> Lines, Dictionary<WeatherField, List<double>> Values, RowClock Clock) ReadRows(TableColumns columns)
    {
        var (stamps, rowLines) = (new List<DateTime>(), new List<int>());
        var values = columns.Fields.ToDictionary(c => c.Map.Field, _ => new List<double>());
        var rows = new List<(List<(string Text, int Column)> Fields, string Stamp, int Line)>();
        for (var l = columns.Line + 1; l < lines.Count && !Ends(l, columns); l++)
        {
            if (IsBlank(lines[l]))
                continue;
            var fields = CsvFields.Split(lines[l], columns.Delimiter);
            rows.Add((fields, string.Join(' ', columns.Time.Where(i => i < fields.Count).Select(i => fields[i].Text)), l + 1));
        }

        var clock = RowClock.For(map, years, [.. rows.Select(r => r.Stamp)]);
        foreach (var (fields, stampText, line) in rows)
        {
            if (faults.Faults.Count >= MostFaults)
                break;
            if (!Fits(fields, columns, line))
                continue;
            if (!clock.TryRead(stampText, out var stamp))
            {
                faults.Add(file, line, fields[columns.Time[0]].Column, stampText, "a date and time as " + clock.Pattern);
                continue;
            }

            if (stamp is not { } known)
                continue;
            stamps.Add(known);
            rowLines.Add(line);
            foreach (var (field, index, _) in columns.Fields)
                values[field.Field].Add(ReadValue(fields[index].Text, columns.Delimiter, line));
        }

        if (wordCells > Math.Max(20, rows.Count / 50))
            faults.Add(file, firstWord.Line, 0, firstWord.Text, FormattableString.Invariant($"numbers with a decimal point; {wordCells} cells hold none"));
        return (stamps, rowLines, values, clock);
    }

    private bool Fits(List<(string Text, int Column)> fields, TableColumns columns, int line)
    {
        var last = columns.Fields.Select(f => f.Index).Concat(columns.Time).DefaultIfEmpty(0).Max();
        if (fields.Count <= last)
        {
            faults.Add(file, line, 0, fields[^1].Text, FormattableString.Invariant($"at least {last + 1} fields; the row has {fields.Count} (cut short?)"));
            return false;
        }

        var extra = fields.Skip(columns.Names.Count).FirstOrDefault(f => f.Text.Length > 0);
        if (extra.Text is null)
            return true;
        faults.Add(file, line, extra.Column, extra.Text, FormattableString.Invariant($"no more fields than the {columns.Names.Count} column names (decimal commas?)"));
        return false;
    }

    private double ReadValue(string text, char delimiter, int line)
    {
        if (text.Length == 0)
            return double.NaN;
        var plain = delimiter != ',' && !text.Contains('.') ? text.Replace(',', '.') : text;
        if (PlainNumber.TryRead(plain, out var value))
            return map.MissingCodes.Contains(value) ? double.NaN : value;
        if (text.ToLowerInvariant() is "nan" or "na" or "n/a" or "null" or "-" or "--" or "#n/a")
            return double.NaN;
        if (wordCells++ == 0)
            firstWord = (text, line);
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
