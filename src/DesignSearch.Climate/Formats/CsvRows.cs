using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>Reads rows whose fields are parted by a sign, by the names of their columns.</summary>
internal sealed class CsvRows(string file, FormatMap map, string[] lines, FaultList faults)
{
    private readonly List<(int Start, int End)> bounds = [];
    private int next;

    /// <summary>The rows; null when there is no line of names.</summary>
    public TableText? Read()
    {
        if (TableColumns.Find(map, lines) is not { } columns)
        {
            faults.Add(file, 1, 0, "", "a line of column names with " + string.Join(", ", map.TimeColumns[0]));
            return null;
        }

        columns.FindFields(map, lines, file, faults);
        var table = new TableText(columns.Line + 1) { DecimalCommas = columns.Delimiter != ',' };
        foreach (var (field, index, _, unit) in columns.Fields)
            table.Fields.Add((field, unit, columns.Names[index].Column));
        var last = columns.Fields.Select(f => f.Index).Concat(columns.Time).Max();
        var names = lines[columns.Line];
        for (var l = columns.Line + 1; l < lines.Length && !Ends(l, columns, last); l++)
        {
            // Files put one after the other repeat their names.
            if (IsBlank(lines[l]) || (lines[l].Length == names.Length && lines[l] == names))
                continue;
            if (faults.Faults.Count >= TableReader.MostFaults)
                break;
            CsvFields.Scan(lines[l], columns.Delimiter, bounds);
            if (Fits(l, columns.Names.Count, last))
                table.Rows.Add(Row(l, columns));
        }

        return table;
    }

    private TextRow Row(int line, TableColumns columns)
    {
        var stamp = columns.Time.Length == 1 ? Field(line, columns.Time[0]) : string.Join(' ', columns.Time.Select(i => Field(line, i)));
        var cells = new string[columns.Fields.Count];
        for (var f = 0; f < cells.Length; f++)
        {
            var (field, index, flags, _) = columns.Fields[f];
            var cell = Field(line, index);
            cells[f] = field.Of(cell, flags == index || flags < 0 || flags >= bounds.Count ? cell : Field(line, flags));
        }

        return new(line + 1, bounds[columns.Time[0]].Start + 1, stamp, cells);
    }

    private string Field(int line, int index) => CsvFields.Bare(lines[line].AsSpan(bounds[index].Start, bounds[index].End - bounds[index].Start)).ToString();

    // A blank line ends the table unless more rows of the same kind follow.
    private bool Ends(int line, TableColumns columns, int last)
    {
        if (!IsBlank(lines[line]))
            return false;
        // Looked for once for all the lines of a gap.
        if (next <= line)
            next = line + 1;
        while (next < lines.Length && IsBlank(lines[next]))
            next++;
        if (next == lines.Length)
            return true;
        var fields = CsvFields.Split(lines[next], columns.Delimiter);
        return fields.Count <= last || fields[columns.Time[0]].Text is not [>= '0' and <= '9', ..];
    }

    private static bool IsBlank(string line) => line.AsSpan().Trim(", ;\t\r").Length == 0;

    private bool Fits(int line, int names, int last)
    {
        if (bounds.Count <= last)
        {
            faults.Add(file, line + 1, 0, Field(line, bounds.Count - 1), FormattableString.Invariant($"at least {last + 1} fields; the row has {bounds.Count} (cut short?)"));
            return false;
        }

        for (var f = names; f < bounds.Count; f++)
        {
            if (Field(line, f) is not { Length: > 0 } extra)
                continue;
            faults.Add(file, line + 1, bounds[f].Start + 1, extra, FormattableString.Invariant($"no more fields than the {names} column names (decimal commas?)"));
            return false;
        }

        return true;
    }
}
