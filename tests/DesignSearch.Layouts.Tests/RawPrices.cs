using System.Globalization;
using DesignSearch.Testing;

namespace DesignSearch.Layouts.Tests;

/// <summary>Price and life of a part straight from the text of the starter catalogue, without product code, so that bills are checked against the files themselves.</summary>
internal static class RawPrices
{
    private static readonly Dictionary<string, (decimal Price, double LifeYears, decimal Pack)> Rows =
        Directory.EnumerateFiles(Repository.At("catalogs", "starter"), "*.csv").SelectMany(Read).ToDictionary(r => r.Id, r => r.Row, StringComparer.Ordinal);

    public static decimal Price(string id) => Rows[id].Price;

    public static double LifeYears(string id) => Rows[id].LifeYears;

    /// <summary>How much is bought of an article: whole packs, counted up one by one, where it comes in packs.</summary>
    public static decimal Bought(string id, decimal quantity)
    {
        if (Rows[id].Pack == 0)
            return quantity;
        var bought = 0m;
        while (bought < quantity)
            bought += Rows[id].Pack;
        return bought;
    }

    /// <summary>Sum of the articles, each bought once for all its lines and rounded to the cent with half a cent going up.</summary>
    public static decimal Total(IEnumerable<(string Id, decimal Quantity)> lines) => lines.GroupBy(l => l.Id).Sum(g =>
        Math.Round(Bought(g.Key, g.Sum(l => l.Quantity)) * Price(g.Key), 2, MidpointRounding.AwayFromZero));

    private static IEnumerable<(string Id, (decimal, double, decimal) Row)> Read(string file)
    {
        var rows = File.ReadLines(file).Where(l => !l.StartsWith('#') && l.Length > 0).Select(Cells).ToList();
        var (life, pack) = (rows[0].IndexOf("life_years"), rows[0].IndexOf("pack"));
        decimal Pack(List<string> cells) => pack < 0 || cells[pack].Length == 0 ? 0 : decimal.Parse(cells[pack], CultureInfo.InvariantCulture);
        return rows.Skip(1).Select(c => (
            c[0], (decimal.Parse(c[3], CultureInfo.InvariantCulture), double.Parse(c[life], CultureInfo.InvariantCulture), Pack(c))));
    }

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
