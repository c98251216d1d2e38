using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using CsvHelper;

namespace DesignSearch.Files;

/// <summary>Tables of ours as spreadsheets want them.</summary>
public static partial class SpreadsheetTable
{
    private static readonly UTF8Encoding Plain = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>A table as a file holds it.</summary>
    /// <param name="table">What <see cref="CsvText"/> wrote.</param>
    /// <param name="separator">What parts its cells.</param>
    public static byte[] Bytes(string table, CellSeparator separator) =>
        separator == CellSeparator.Comma ? Plain.GetBytes(table) : [.. Encoding.UTF8.Preamble, .. Plain.GetBytes(Semicolons(table))];

    /// <summary>The same table with semicolons between the cells and decimal commas in its numbers.</summary>
    /// <param name="table">What <see cref="CsvText"/> wrote.</param>
    public static string Semicolons(string table)
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(writer, CsvWriterOptions.Default with { NewLine = "\n", Separator = ';', CommentPrefix = '#' }, true))
        {
            foreach (var row in Rows(table))
                csv.WriteRecord([.. row.Select(c => Number(c) is null ? c : c.Replace('.', ','))]);
        }

        return Head(table) + writer;
    }

    /// <summary>The cells of a table, its header first: numbers as numbers, the rest as text, nothing for an empty cell.</summary>
    /// <param name="table">What <see cref="CsvText"/> wrote.</param>
    public static IReadOnlyList<IReadOnlyList<object?>> Cells(string table) =>
        [.. Rows(table).Select(r => (IReadOnlyList<object?>)[.. r.Select(c => c.Length == 0 ? null : Number(c) is { } number ? (object)number : c)])];

    private static double? Number(string cell) => Digits().IsMatch(cell) && PlainNumber.TryRead(cell, out var value) ? value : null;

    // Remarks stand above the header only.
    private static string Head(string table)
    {
        var end = 0;
        while (end < table.Length && table[end] == '#')
            end = table.IndexOf('\n', end) + 1;
        return table[..end];
    }

    private static List<string[]> Rows(string table)
    {
        using var csv = CsvReader.FromText(table, CsvReaderOptions.Default with { Separator = ',', CommentPrefix = '#' });
        csv.ReadHeader();
        List<string[]> rows = [[.. csv.Headers]];
        while (csv.Read())
            rows.Add([.. rows[0].Select((_, i) => csv.GetString(i))]);
        return rows;
    }

    [GeneratedRegex(@"^-?\d+(\.\d+)?(E[+-]?\d+)?$")]
    private static partial Regex Digits();
}
