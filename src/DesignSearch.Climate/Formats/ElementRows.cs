using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Climate.Formats;

/// <summary>Reads tables that give one element of a day at a time, and puts the elements of each day into one row.</summary>
/// <remarks>The fields of the file are called station, day (or month, in lines of months), element, value and flag.</remarks>
internal sealed class ElementRows(string file, FormatMap map, string[] lines, FaultList faults)
{
    private const int LongestMonth = 31;
    private readonly SortedDictionary<string, TextRow> days = new(StringComparer.Ordinal);
    private readonly List<(int Start, int End)> bounds = [];
    private string station = "";

    public TableText Read()
    {
        var table = new TableText(1);
        foreach (var field in map.Fields)
            table.Fields.Add((field, field.Unit, 1));
        for (var l = 0; l < lines.Length && faults.Faults.Count < TableReader.MostFaults; l++)
        {
            if (lines[l].AsSpan().Trim().Length == 0 || lines[l][0] == '#')
                continue;
            if (map.Table.Kind == TableKind.Elements)
                TakeRow(l);
            else
                TakeMonth(l);
        }

        table.Rows.AddRange(days.Values);
        return table;
    }

    private void TakeRow(int line)
    {
        CsvFields.Scan(lines[line], CsvFields.DelimiterOf(lines[line]), bounds);
        string Field(string name)
        {
            var index = map.Table.Names.ToList().IndexOf(name);
            return index >= 0 && index < bounds.Count ? CsvFields.Bare(lines[line].AsSpan(bounds[index].Start, bounds[index].End - bounds[index].Start)).ToString() : "";
        }

        if (IsOfOneStation(line, Field("station")))
            Put(line, bounds[Math.Min(1, bounds.Count - 1)].Start + 1, Field("day"), Field("element"), Field("value"), Field("flag"));
    }

    private void TakeMonth(int line)
    {
        var text = lines[line];
        FixedPlace Place(string name) => map.Table.Places.First(p => p.Name == name);
        if (!IsOfOneStation(line, Place("station").Of(text)))
            return;
        var (month, element, value, flag) = (Place("month"), Place("element").Of(text), Place("value"), Place("flag"));
        for (var d = 0; d < LongestMonth; d++)
        {
            var shift = d * map.Table.DayWidth;
            var cell = (value with { From = value.From + shift, To = value.To + shift }).Of(text);
            // Days that a month does not have are written as missing.
            if (cell.Length > 0 && !map.IsMissing(cell))
                Put(
                    line, month.From, month.Of(text) + (d + 1).ToString("00", CultureInfo.InvariantCulture), element, cell,
                    (flag with { From = flag.From + shift, To = flag.To + shift }).Of(text));
        }
    }

    private bool IsOfOneStation(int line, string id)
    {
        if (station.Length == 0)
            station = id;
        if (id == station)
            return true;
        faults.Add(file, line + 1, 1, id, $"rows of one station; the first are of {station}");
        return false;
    }

    private void Put(int line, int column, string day, string element, string value, string flag)
    {
        for (var f = 0; f < map.Fields.Count; f++)
        {
            if (map.Fields[f].Names[0] != element)
                continue;
            if (!days.TryGetValue(day, out var row))
                days[day] = row = new(line + 1, column, day, [.. map.Fields.Select(_ => "")]);
            row.Cells[f] = map.Fields[f].Of(value, flag);
        }
    }
}
