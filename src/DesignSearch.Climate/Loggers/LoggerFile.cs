using DesignSearch.Climate.Formats;
using DesignSearch.Files;

namespace DesignSearch.Climate.Loggers;

/// <summary>Reads a logger's table by the times in it, whatever else its columns hold; the clocks and separators are those of the weather readers.</summary>
public static class LoggerFile
{
    private const int MostFaults = 8;

    private static readonly string[][] TimeColumns =
        [["Date Time"], ["DateTime"], ["Date/Time"], ["Timestamp"], ["Date", "Time"], ["Time"], ["Date"], ["UTC"], ["time(UTC)"]];

    private static readonly string[] Ons = ["on", "yes", "true", "open", "closed circuit"], Offs = ["off", "no", "false"];

    private static readonly string[] Gaps = ["", "nan", "na", "n/a", "null", "-", "--", "#n/a", "error"];

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, packed by gzip or not.</param>
    /// <param name="faults">Receives everything that is wrong in it.</param>
    /// <returns>The table; null where the file has no line of names with a time among them, or where it is at fault.</returns>
    /// <exception cref="InputException">The file cannot be opened.</exception>
    public static LoggerTable? Read(string path, FaultList faults)
    {
        ArgumentNullException.ThrowIfNull(faults);
        var source = SourceText.Read(path);
        var map = KnownFormats.All(null)[^1] with { Fields = [], TimeColumns = TimeColumns };
        if (source.Json is not null || TableColumns.Find(map, source.Lines) is not { } columns)
            return null;
        var before = faults.Count;
        var (rows, bounds) = (new List<(int Line, string Stamp, string[] Cells)>(), new List<(int Start, int End)>());
        for (var l = columns.Line + 1; l < source.Lines.Length; l++)
        {
            var line = source.Lines[l];
            if (line.AsSpan().Trim(", ;\t\r").Length == 0 || line[0] == '#' || line == source.Lines[columns.Line])
                continue;
            CsvFields.Scan(line, columns.Delimiter, bounds);
            if (bounds.Count <= columns.Time.Max())
            {
                faults.Add(path, l + 1, 0, line, FormattableString.Invariant($"{columns.Names.Count} fields; the row has {bounds.Count} (cut short?)"));
                if (faults.Count - before >= MostFaults)
                    return null;
                continue;
            }

            string Cell(int i) => i < bounds.Count ? CsvFields.Bare(line.AsSpan(bounds[i].Start, bounds[i].End - bounds[i].Start)).ToString() : "";
            rows.Add((l + 1, string.Join(' ', columns.Time.Select(Cell)), [.. Enumerable.Range(0, columns.Names.Count).Select(Cell)]));
        }

        var table = Table(path, source, map, columns, rows, faults);
        return faults.Count == before ? table : null;
    }

    private static LoggerTable Table(
        string path, SourceText source, FormatMap map, TableColumns columns, List<(int Line, string Stamp, string[] Cells)> rows, FaultList faults)
    {
        var clock = RowClock.For(map, YearKind.Real, [.. rows.Select(r => r.Stamp)]);
        var (stamps, kept, remarks) = (new List<DateTime>(), new List<int>(), new List<string>());
        var before = faults.Count;
        for (var r = 0; r < rows.Count && faults.Count - before < MostFaults; r++)
        {
            if (!clock.TryRead(rows[r].Stamp, out var stamp) || stamp is not { } known)
            {
                faults.Add(path, rows[r].Line, 1, rows[r].Stamp, "a date and time as " + clock.Pattern);
                continue;
            }

            stamps.Add(known);
            kept.Add(r);
        }

        if (stamps.Count < 2 && faults.Count == before)
            faults.Add(path, columns.Line + 1, 0, "", "two rows of data or more below the column names");
        if (clock.IsMixed)
            faults.Add(path, columns.Line + 1, 0, "", "a zone on every stamp or on none; some end with Z or an offset, others do not");
        if (faults.Count == before && !clock.IsUtc && CivilClock.ToStandard(stamps) is { } sentence)
            remarks.Add(sentence);
        var order = Enumerable.Range(0, stamps.Count).OrderBy(i => stamps[i]).ToArray();
        var values = new List<LoggerColumn>();
        for (var c = 0; c < columns.Names.Count; c++)
        {
            if (!columns.Time.Contains(c))
                values.Add(new(columns.Names[c].Text, Column(path, columns, c, [.. order.Select(i => rows[kept[i]])], faults)));
        }

        return new()
        {
            Path = path,
            Stamps = [.. order.Select(i => stamps[i])],
            Lines = [.. order.Select(i => rows[kept[i]].Line)],
            IsUtc = clock.IsUtc,
            Columns = values,
            Head = Head(source.Lines, columns.Line),
            StepMinutes = TimeSteps.UsualMinutes([.. order.Select(i => stamps[i])]),
            Remarks = remarks,
        };
    }

    // A column of words is no series: it is left empty. One cell of words among numbers is a slip.
    private static double[] Column(string path, TableColumns columns, int c, (int Line, string Stamp, string[] Cells)[] rows, FaultList faults)
    {
        var values = new double[rows.Length];
        var (words, numbers, first) = (0, 0, -1);
        for (var r = 0; r < rows.Length; r++)
        {
            var cell = rows[r].Cells[c];
            values[r] = Value(cell, columns.Delimiter != ',', out var isWord);
            numbers += double.IsNaN(values[r]) ? 0 : 1;
            if (isWord && words++ == 0)
                first = r;
        }

        if (words > 0 && numbers > words)
            faults.Add(path, rows[first].Line, columns.Names[c].Column, rows[first].Cells[c], $"a number, on or off, or nothing, in column '{columns.Names[c].Text}'");
        return values;
    }

    private static double Value(string cell, bool decimalCommas, out bool isWord)
    {
        isWord = false;
        var plain = decimalCommas && !cell.Contains('.') ? cell.Replace(',', '.') : cell;
        if (PlainNumber.TryRead(plain, out var value))
            return value is -9999 or -999 or 9999 ? double.NaN : value;
        var word = cell.ToLowerInvariant();
        if (Ons.Contains(word))
            return 1;
        if (Offs.Contains(word))
            return 0;
        isWord = !Gaps.Contains(word);
        return double.NaN;
    }

    private static Dictionary<string, string> Head(string[] lines, int until)
    {
        var head = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var line in lines.Take(until).Where(l => l.StartsWith('#') && l.Contains(':')))
            head[line[1..line.IndexOf(':', StringComparison.Ordinal)].Trim()] = line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim();
        return head;
    }
}
