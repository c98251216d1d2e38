using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>Reads the rows of a weather file, however its format lays them out.</summary>
internal sealed class TableReader(string file, FormatMap map, YearKind years, SourceText source, FaultList faults)
{
    /// <summary>Year that typical years are written in; neither it nor its neighbours are leap years.</summary>
    public const int NominalYear = 2001;

    /// <summary>Faults of one file that are told.</summary>
    public const int MostFaults = 8;

    private int wordCells;
    private (string Text, int Line) firstWord;

    /// <summary>The rows; faults go to the list, and with any of them the table must not be used.</summary>
    /// <param name="repairs">Takes sentences about single cells.</param>
    public SourceTable Read(List<string> repairs)
    {
        if (TextOf() is not { } text)
            return SourceTable.Empty;
        var clock = RowClock.For(map, years, [.. text.Rows.Select(r => r.Stamp)]);
        var (stamps, lines, values) = ReadRows(text, clock);
        if (stamps.Count < 2 && faults.IsEmpty)
            faults.Add(file, text.Line, 0, "", "two rows of data or more below the column names");
        if (clock.IsMixed)
            faults.Add(file, text.Line, 0, "", "a zone on every stamp or on none; some end with Z or an offset, others do not");
        if (!faults.IsEmpty)
            return SourceTable.Empty;
        if (wordCells > 0)
            repairs.Add(FormattableString.Invariant($"{wordCells} cells hold no number, the first '{firstWord.Text}' in line {firstWord.Line}; they were taken as gaps."));
        if (map.CivilClock && !clock.IsUtc && CivilClock.ToStandard(stamps) is { } sentence)
            repairs.Add(sentence);
        if (map.NearestHours)
            (stamps, lines, values) = NearestHours.Take(stamps, lines, values, repairs);
        var step = TimeSteps.UsualMinutes(stamps) / 60.0;
        for (var f = 0; f < values.Length; f++)
            Convert(values[f], text.Fields[f].Map, text.Fields[f].Unit, step, text.Line, text.Fields[f].Column);
        return new()
        {
            Stamps = [.. stamps],
            Lines = [.. lines],
            IsTypical = clock.IsTypical,
            IsUtc = clock.IsUtc,
            Years = clock.Years,
            Values = values.Select((v, f) => (text.Fields[f].Map.Field, v)).ToDictionary(v => v.Field, v => v.v.ToArray()),
        };
    }

    private TableText? TextOf() => map.Table.Kind switch
    {
        TableKind.Fixed => new FixedRows(file, map, source.Lines, faults).Read(),
        TableKind.Json => new JsonRows(file, map, source.Json!, faults).Read(),
        TableKind.Elements or TableKind.MonthLines => new ElementRows(file, map, source.Lines, faults).Read(),
        _ => new CsvRows(file, map, source.Lines, faults).Read(),
    };

    private (List<DateTime> Stamps, List<int> Lines, List<double>[] Values) ReadRows(TableText text, RowClock clock)
    {
        var (stamps, lines) = (new List<DateTime>(text.Rows.Count), new List<int>(text.Rows.Count));
        var values = text.Fields.Select(_ => new List<double>(text.Rows.Count)).ToArray();
        foreach (var row in text.Rows)
        {
            if (faults.Faults.Count >= MostFaults)
                break;
            if (!clock.TryRead(row.Stamp, out var stamp))
            {
                faults.Add(file, row.Line, text.ColumnOf(row), row.Stamp, "a date and time as " + clock.Pattern);
                continue;
            }

            if (stamp is not { } known)
                continue;
            stamps.Add(known);
            lines.Add(row.Line);
            for (var f = 0; f < values.Length; f++)
                values[f].Add(ReadValue(row.Cells[f], text.Fields[f].Map, text.DecimalCommas, row.Line));
        }

        if (wordCells > Math.Max(20, text.Rows.Count / 50))
            faults.Add(file, firstWord.Line, 0, firstWord.Text, FormattableString.Invariant($"numbers with a decimal point; {wordCells} cells hold none"));
        return (stamps, lines, values);
    }

    private double ReadValue(string text, FieldMap field, bool decimalCommas, int line)
    {
        if (text.Length == 0)
            return double.NaN;
        var plain = decimalCommas && !text.Contains('.') ? text.Replace(',', '.') : text;
        if (PlainNumber.TryRead(plain, out var value))
            return map.MissingCodes.Contains(value) || field.Missing.Contains(value) ? double.NaN : field.Codes.GetValueOrDefault(value, value);
        if (text.ToLowerInvariant() is "nan" or "na" or "n/a" or "null" or "-" or "--" or "#n/a")
            return double.NaN;
        if (wordCells++ == 0)
            firstWord = (text, line);
        return double.NaN;
    }

    private void Convert(List<double> values, FieldMap field, string unit, double stepHours, int line, int column)
    {
        if (WeatherUnit.Find(unit, stepHours) is not { } rule)
        {
            faults.Add(file, line, column, unit, "a unit such as °C, °F, K, W/m², kJ/m², m/s, km/h, mph or %");
            return;
        }

        var times = field.Times != 1 && values.TrueForAll(v => double.IsNaN(v) || v == Math.Round(v)) ? field.Times : 1;
        for (var i = 0; i < values.Count; i++)
            values[i] = values[i] * times * rule.Factor + rule.Offset;
    }
}
