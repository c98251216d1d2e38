using System.Text;
using DesignSearch.Files;
using DesignSearch.Files.Toml;

namespace DesignSearch.Climate.Formats;

/// <summary>The formats that can be read: those that come with the program and those a builder put beside a scenario.</summary>
internal static class KnownFormats
{
    // The logger is last: it knows itself by its column names only.
    private static readonly string[] Order =
    [
        "plain", "tmy3", "nsrdb-satellite", "pvgis-typical-year", "pvgis-hourly", "nasa-hourly", "era5-open-interface", "station-hours",
        "pvgis-typical-year-json", "pvgis-hourly-json", "era5-open-interface-json", "isd-lite", "global-hourly", "ghcn-daily",
        "ghcn-daily-elements", "ghcn-daily-months", "temperature-logger",
    ];

    // Those of the program cannot change while it runs.
    private static readonly Lazy<IReadOnlyList<FormatMap>> Own = new(() =>
    {
        var faults = new FaultList();
        FormatMap[] maps = [.. Order.Select(id => FormatMapReader.Read(id, TomlReader.ReadText(Text(id), id + ".toml", faults), faults))];
        faults.ThrowIfAny();
        return maps;
    });

    /// <summary>Every format in the order in which it is tried.</summary>
    /// <param name="folder">Folder with formats of the builder's own, tried first; may be missing.</param>
    /// <exception cref="InputException">One of them cannot be read.</exception>
    public static IReadOnlyList<FormatMap> All(string? folder)
    {
        var faults = new FaultList();
        var maps = new List<FormatMap>();
        if (folder is not null && Directory.Exists(folder))
        {
            foreach (var path in Directory.EnumerateFiles(folder, "*.toml").Order(StringComparer.Ordinal))
                maps.Add(FormatMapReader.Read(Path.GetFileNameWithoutExtension(path), TomlReader.ReadFile(path, path, faults), faults));
        }

        faults.ThrowIfAny();
        return [.. maps, .. Own.Value];
    }

    private static string Text(string id)
    {
        using var stream = typeof(KnownFormats).Assembly.GetManifestResourceStream("Formats." + id + ".toml")
            ?? throw new InvalidOperationException("The program was built without its weather format " + id + ".");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
