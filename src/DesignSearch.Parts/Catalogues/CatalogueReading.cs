using System.Globalization;
using DesignSearch.Files;

namespace DesignSearch.Parts.Catalogues;

/// <summary>Reads the files of catalogue folders and checks what no single row can know.</summary>
internal static class CatalogueReading
{
    public static List<IPart> Read(IEnumerable<string> folders, IReadOnlyList<PartKind> kinds, SpoiltRows spoilt, FaultList faults)
    {
        var entries = new List<CsvEntry<IPart>>();
        var known = kinds.Select(k => k.File).ToList();
        foreach (var folder in folders)
        {
            if (!Directory.Exists(folder))
            {
                faults.Add(folder, 0, 0, "", "a folder of this name with the CSV files of a catalogue, but there is none");
                spoilt.All = true;
                continue;
            }

            if (!TryList(folder, faults, out var files))
            {
                spoilt.All = true;
                continue;
            }

            if (files.Count == 0)
                faults.Add(folder, 0, 0, "", "at least one of the files " + string.Join(", ", known));
            foreach (var file in files.Except(known))
            {
                spoilt.Kinds.UnionWith(kinds.Where(k => k.File == NearWord.Of(file, known)));
                faults.Add(Path.Combine(folder, file), 0, 0, file, "a file of a known kind of part" + NearWord.Hint(file, known) + "; the files are " + string.Join(", ", known));
            }

            foreach (var kind in kinds.Where(k => files.Contains(k.File)))
                entries.AddRange(Rows(Path.Combine(folder, kind.File), kind, spoilt, faults));
        }

        foreach (var entry in entries)
            Check(entry, faults);
        return Distinct(entries, kinds, faults);
    }

    // A row with a fault has an id all the same; where the file itself is at fault, nobody knows what stood in it.
    private static IReadOnlyList<CsvEntry<IPart>> Rows(string path, PartKind kind, SpoiltRows spoilt, FaultList faults)
    {
        var (before, inRows) = (faults.Count, 0);
        var rows = CsvTable.ReadFile(
            path,
            cells =>
            {
                var found = faults.Count;
                var part = kind.ReadRow(cells);
                if (faults.Count > found && part.Id.Length > 0)
                    spoilt.Rows[part.Id] = kind;
                else if (faults.Count > found)
                    spoilt.Kinds.Add(kind);
                inRows += faults.Count - found;
                return part;
            },
            faults);
        if (faults.Count - before > inRows)
            spoilt.Kinds.Add(kind);
        return rows;
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
