using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using DesignSearch.Files;
using DesignSearch.Layouts.Decide.Judging;
using MiniExcelLibs;
using MiniExcelLibs.OpenXml;

namespace DesignSearch.Reporting.Tables;

/// <summary>Writes the shopping lists of all layouts as one workbook, <c>lists.xlsx</c>, a sheet a layout: a spreadsheet of any language opens it as it is.</summary>
internal static partial class ListBook
{
    /// <summary>Name of the file.</summary>
    public const string Name = "lists.xlsx";

    // Whenever it is made, the same lists give the same bytes; an archive begins to count in this year.
    private static readonly DateTimeOffset Always = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The workbook.</summary>
    /// <param name="layouts">The ranking, at least one layout.</param>
    /// <param name="currency">The scenario's word.</param>
    /// <exception cref="InputException">The stored lines contradict each other or the stored build price.</exception>
    public static byte[] Of(IReadOnlyList<JudgedLayout> layouts, string currency)
    {
        var sheets = layouts.ToDictionary(l => FormattableString.Invariant($"{l.Rank}"), l => (object)Rows(ShoppingList.Of(l, currency)));
        using var made = new MemoryStream();
        made.SaveAs(sheets, configuration: new OpenXmlConfiguration { AutoFilter = false });
        return Timeless(made);
    }

    private static List<Dictionary<string, object?>> Rows(string table)
    {
        var cells = SpreadsheetTable.Cells(table);
        return [.. cells.Skip(1).Select(row => row.Select((cell, i) => ((string)cells[0][i]!, cell)).ToDictionary(c => c.Item1, c => c.cell))];
    }

    private static byte[] Timeless(MemoryStream made)
    {
        using var read = new ZipArchive(made, ZipArchiveMode.Read);
        using var written = new MemoryStream();
        var ids = new List<string>();
        using (var archive = new ZipArchive(written, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in read.Entries)
            {
                var copy = archive.CreateEntry(entry.FullName);
                copy.LastWriteTime = Always;
                using var from = entry.Open();
                using var to = copy.Open();
                if (entry.Name == "workbook.xml" || entry.Name == "workbook.xml.rels")
                    to.Write(Named(from, ids));
                else
                    from.CopyTo(to);
            }
        }

        return written.ToArray();
    }

    // Sheets are tied to the book by names drawn by chance.
    private static byte[] Named(Stream from, List<string> ids)
    {
        using var reader = new StreamReader(from, Encoding.UTF8);
        return Encoding.UTF8.GetBytes(Drawn().Replace(reader.ReadToEnd(), found =>
        {
            if (!ids.Contains(found.Value))
                ids.Add(found.Value);
            return FormattableString.Invariant($"Rsheet{ids.IndexOf(found.Value) + 1}");
        }));
    }

    [GeneratedRegex(@"\bR[0-9a-f]{32}\b")]
    private static partial Regex Drawn();
}
