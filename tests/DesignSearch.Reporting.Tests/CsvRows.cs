using CsvHelper;

namespace DesignSearch.Reporting.Tests;

/// <summary>Reads a table back with the CSV library, each row by its column names.</summary>
internal static class CsvRows
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Of(string text)
    {
        using var csv = CsvReader.FromText(text, CsvReaderOptions.Default with { Separator = ',' });
        csv.ReadHeader();
        var names = csv.Headers.ToArray();
        List<IReadOnlyDictionary<string, string>> rows = [];
        while (csv.Read())
            rows.Add(names.Select((n, i) => (Name: n, Value: csv.GetString(i))).ToDictionary(c => c.Name, c => c.Value));
        return rows;
    }
}
