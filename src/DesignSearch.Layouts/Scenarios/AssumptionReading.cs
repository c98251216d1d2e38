using DesignSearch.Files.Toml;
using DesignSearch.Season.Assumptions;

namespace DesignSearch.Layouts.Scenarios;

/// <summary>Reads [assumptions]: any of the model's own entries, each in its range.</summary>
internal static class AssumptionReading
{
    public static (SeasonAssumptions Values, IReadOnlySet<string> Set) Read(TomlTable? table, IReadOnlyList<AssumptionEntry> entries)
    {
        var values = SeasonAssumptions.Default;
        var set = new HashSet<string>(StringComparer.Ordinal);
        if (table is null)
            return (values, set);
        foreach (var entry in entries)
        {
            if (!table.Has(entry.Key))
            {
                table.Find(entry.Key);
                continue;
            }

            values = values.With(entry, table.Number(entry.Key, entry.Min, entry.Max, entry.Unit));
            set.Add(entry.Key);
        }

        table.ReportUnknown();
        return (values, set);
    }
}
