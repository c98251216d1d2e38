using System.Globalization;
using DesignSearch.Testing;

namespace DesignSearch.Layouts.Tests;

/// <summary>Price and life of a part straight from the text of the starter catalogue, without product code, so that bills are checked against the files themselves.</summary>
internal static class RawPrices
{
    private static readonly Dictionary<string, (decimal Price, double LifeYears)> Rows = Directory.EnumerateFiles(Repository.At("catalogs", "starter"), "*.csv")
        .SelectMany(File.ReadLines).Where(l => !l.StartsWith('#') && !l.StartsWith("id,", StringComparison.Ordinal)).Select(Cells)
        .ToDictionary(c => c[0], c => (decimal.Parse(c[3], CultureInfo.InvariantCulture), double.Parse(c[7], CultureInfo.InvariantCulture)), StringComparer.Ordinal);

    public static decimal Price(string id) => Rows[id].Price;

    public static double LifeYears(string id) => Rows[id].LifeYears;

    /// <summary>Sum of the lines, each rounded to the cent with half a cent going up.</summary>
    public static decimal Total(IEnumerable<(string Id, decimal Quantity)> lines) => lines.Sum(l => Math.Round(l.Quantity * Price(l.Id), 2, MidpointRounding.AwayFromZero));

    // Commas in double quotes belong to the name.
    private static List<string> Cells(string line)
    {
        var cells = new List<string> { "" };
        var quoted = false;
        foreach (var letter in line)
        {
            if (letter == '"')
                quoted = !quoted;
            else if (letter == ',' && !quoted)
                cells.Add("");
            else
                cells[^1] += letter;
        }

        return cells;
    }
}
