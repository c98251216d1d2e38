using DesignSearch.Files;
using DesignSearch.Files.Toml;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Runs.Checking;

/// <summary>Looks for what a builder left as it stood in an example that was copied: another place's climate passes every other check.</summary>
internal static class CopiedLines
{
    private const int Telling = 2;
    private const string NameKey = "name";

    // What no two places have alike by chance.
    private static readonly (string Table, string[] Keys)[] OfThePlace =
    [
        ("", [NameKey, "description"]),
        ("site", ["place", "latitude_deg", "longitude_deg", "elevation_m", "horizon_deg"]),
        ("climate", ["mean_air_c", "mean_daily_low_c", "sun_kwh_per_m2_day", "wind_m_per_s", "humidity_pct", "lowest_known_c"]),
    ];

    /// <summary>A sentence on the example of which most stands here still; null where none does, and for an example itself.</summary>
    /// <param name="folder">The run.</param>
    public static string? Of(RunFolder folder)
    {
        var own = Read(folder);
        var found = ExampleRuns.Names.Select(n => (Name: n, Same: Same(own, Read(ExampleRuns.Of(n))))).Where(e => e.Same.Count >= Telling).ToList();
        var isExample = found.Exists(e => e.Name == Path.GetFileName(Path.GetFullPath(folder.Path)) && e.Same.Exists(s => s.Key == NameKey));
        return found.Count == 0 || isExample ? null : found.MaxBy(e => e.Same.Count) is var (name, same) ? CheckWords.Copied(name, same) : null;
    }

    private static List<(string Key, int Line)> Same(TomlTable own, TomlTable example) =>
    [
        .. OfThePlace.SelectMany(t => t.Keys.Select(k => (Key: k, Own: Of(own, t.Table)?.Find(k), Their: Of(example, t.Table)?.Find(k))))
            .Where(p => p.Own is not null && p.Their is not null && TomlTable.Shown(p.Own) == TomlTable.Shown(p.Their)).Select(p => (p.Key, p.Own!.Line)),
    ];

    private static TomlTable Read(RunFolder folder) => TomlReader.ReadFile(folder.Scenario, folder.Scenario, new FaultList());

    private static TomlTable? Of(TomlTable file, string table) => table.Length == 0 ? file : file.Find(table)?.Table;
}
