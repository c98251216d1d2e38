using System.Text;
using CsvHelper;

namespace DesignSearch.Files;

/// <summary>Walks through one table: header first, then its rows; structural faults go to the list.</summary>
internal sealed class CsvReading(string file, IReadOnlyList<CsvColumn> columns, FaultList faults)
{
    private char separator = ',';

    /// <summary>True once the header was read and lacks no column that must be there.</summary>
    public bool HasEveryColumn { get; private set; }

    /// <summary>True where cells are parted by semicolons, so that a comma is a decimal sign.</summary>
    public bool HasCommas => separator == ';';

    public IEnumerable<(int Line, IReadOnlyDictionary<string, string> Cells, IReadOnlyDictionary<string, TextPlace> Places)> Rows(string text)
    {
        var width = 0;
        var head = HeaderLine(text).Raw;
        if (columns.Count > 1 && head.Contains(';', StringComparison.Ordinal) && !head.Contains(',', StringComparison.Ordinal))
            separator = ';';
        var options = CsvReaderOptions.Default with
        {
            Separator = separator,
            CommentPrefix = '#',
            TrimWhitespace = true,
            TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Skip,
            FieldCountMismatch = CsvFieldCountHandling.Skip,
            OnMalformedRecord = m => Malformed(m, width),
        };
        using var csv = CsvReader.FromText(text, options);
        if (!TryReadHeader(csv, out var names))
        {
            if (!faults.Faults.Any(f => f.File == file))
                faults.Add(file, 1, 0, "", "a header line with the columns " + string.Join(",", columns.Where(c => !c.IsOptional).Select(c => c.Name)));
            yield break;
        }

        width = names.Count;
        if (!CheckHeader(text, names))
            yield break;
        while (csv.Read())
        {
            var line = checked((int)csv.LineNumber);
            var starts = CsvPlaces.Of(Encoding.UTF8.GetString(csv.RawRecord), line, separator);
            var cells = new Dictionary<string, string>(StringComparer.Ordinal);
            var places = new Dictionary<string, TextPlace>(StringComparer.Ordinal);
            for (var i = 0; i < names.Count; i++)
            {
                cells.TryAdd(names[i], csv.GetString(i).Trim());
                places.TryAdd(names[i], i < starts.Count ? starts[i] : new(line, 0));
            }

            yield return (line, cells, places);
        }
    }

    private static bool TryReadHeader(CsvReader csv, out List<string> names)
    {
        // Asking for the headers reads them.
        names = csv.Headers is null ? [] : [.. csv.Headers.Select(h => h.Trim())];
        return names.Count > 0;
    }

    private bool CheckHeader(string text, List<string> names)
    {
        var (line, raw) = HeaderLine(text);
        if (columns.Count > 1 && names.Count == 1 && raw.IndexOf('\t', StringComparison.Ordinal) is >= 0 and var at)
        {
            faults.Add(file, line, at + 1, "tab", "commas or semicolons between the cells (save the file as CSV)");
            return false;
        }

        var places = CsvPlaces.Of(raw, line, separator);
        var known = columns.Select(c => c.Name).ToList();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < names.Count; i++)
        {
            var column = i < places.Count ? places[i].Column : 0;
            if (!known.Contains(names[i]))
                faults.Add(file, line, column, names[i], "a column of this file" + NearWord.Hint(names[i], known.Except(names)) + "; its columns are " + string.Join(",", known));
            else if (!seen.Add(names[i]))
                faults.Add(file, line, column, names[i], "each column once, but this one stands here twice");
        }

        var missing = columns.Where(c => !c.IsOptional && !seen.Contains(c.Name)).ToList();
        // A column with a slip in its name is not told as missing too.
        var meant = names.Except(known).Select(n => NearWord.Of(n, known.Except(names))).ToHashSet();
        foreach (var column in missing.Where(c => !meant.Contains(c.Name)))
            faults.AddMissing(file, line, $"a column {column.Name} ({column.What})");
        HasEveryColumn = missing.Count == 0;
        return true;
    }

    private static (int Line, string Raw) HeaderLine(string text)
    {
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n', '\r');
        var index = Array.FindIndex(lines, l => l.Trim().Length > 0 && l[0] != '#');
        return index < 0 ? (1, "") : (index + 1, lines[index]);
    }

    private void Malformed(CsvMalformedRecord record, int width)
    {
        var line = checked((int)record.LineNumber);
        var raw = record.RawRecord ?? "";
        var (value, expected) = record.Reason switch
        {
            CsvMalformedReason.FieldCountMismatch => (
                FormattableString.Invariant($"{CsvPlaces.Of(raw, line, separator).Count} cells"),
                FormattableString.Invariant($"{width} cells, as many as the header has columns") + (HasCommas
                    ? " (put text with a semicolon into double quotes)"
                    : " (numbers with a decimal point, as 3.20; text with a comma in double quotes)")),
            CsvMalformedReason.UnterminatedQuote => ("", "a closing double quote; everything after this one was taken as text"),
            CsvMalformedReason.StrayQuote => ("", "double quotes only around a whole cell, and doubled inside it"),
            CsvMalformedReason.TextAfterClosingQuote => ("", $"a {(HasCommas ? "semicolon" : "comma")} or the end of the line after a closing double quote"),
            _ => ("", "a row that can be read"),
        };
        faults.Add(file, line, 0, value, expected);
    }
}
