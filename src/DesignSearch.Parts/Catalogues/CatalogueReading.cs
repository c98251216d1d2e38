using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Parts.Catalogues;

/// <summary>Reads the files of catalogue folders and checks what no single row can know.</summary>
internal static class CatalogueReading
{
    public static List<IPart> Read(IEnumerable<string> folders, IReadOnlyList<PartKind> kinds, FaultList faults)
    {
        var entries = new List<CsvEntry<IPart>>();
        var known = kinds.Select(k => k.File).ToList();
        foreach (var folder in folders)
        {
            if (!Directory.Exists(folder))
            {
                faults.Add(folder, 0, 0, "", "a folder of this name with the CSV files of a catalogue, but there is none");
                continue;
            }

            if (!TryList(folder, faults, out var files))
                continue;
            if (files.Count == 0)
                faults.Add(folder, 0, 0, "", "at least one of the files " + string.Join(", ", known));
            foreach (var file in files.Except(known))
                faults.Add(Path.Combine(folder, file), 0, 0, file, "a file of a known kind of part" + NearWord.Hint(file, known) + "; the files are " + string.Join(", ", known));
            foreach (var kind in kinds.Where(k => files.Contains(k.File)))
                entries.AddRange(CsvTable.ReadFile(Path.Combine(folder, kind.File), kind.ReadRow, faults));
        }

        foreach (var entry in entries)
            Check(entry, faults);
        return Distinct(entries, kinds, faults);
    }

    private static bool TryList(string folder, FaultList faults, out List<string> files)
    {
        files = [];
        try
        {
            files = [.. Directory.EnumerateFiles(folder, "*.csv").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            faults.Add(folder, 0, 0, "", "a folder that can be read");
            return false;
        }
    }

    private static void Check(CsvEntry<IPart> entry, FaultList faults)
    {
        var info = entry.Value.Info;
        RowRule[] prices =
        [
            new(info.PriceLow <= info.Price, "price_low", "at most the usual price of the row"),
            new(info.PriceHigh >= info.Price, "price_high", "at least the usual price of the row"),
            new(info.Pack is null || info.Unit.IsPacked(), "pack", "empty, for pieces, sets and hours come one by one"),
        ];
        foreach (var rule in prices.Concat(entry.Value.Rules).Where(r => !r.IsMet))
        {
            var (line, at) = entry.PlaceOf(rule.Column);
            faults.Add(entry.File, line, at, "", $"{rule.Column}: {rule.Expected} (part {info.Id})");
        }
    }

    private static List<IPart> Distinct(List<CsvEntry<IPart>> entries, IReadOnlyList<PartKind> kinds, FaultList faults)
    {
        var first = new Dictionary<string, CsvEntry<IPart>>(StringComparer.Ordinal);
        foreach (var entry in entries)
        {
            if (first.TryAdd(entry.Value.Id, entry))
                continue;
            var (line, column) = entry.PlaceOf("id");
            var earlier = first[entry.Value.Id];
            faults.Add(
                entry.File, line, column, entry.Value.Id,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"id: a name of its own, but {earlier.File}:{earlier.Line} has this one already"));
        }

        var order = kinds.Select((k, i) => (k, i)).ToDictionary(p => p.k, p => p.i);
        return [.. first.Values.Select(e => e.Value).OrderBy(p => order[p.Kind])];
    }
}
