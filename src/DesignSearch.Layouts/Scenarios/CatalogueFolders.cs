namespace DesignSearch.Layouts.Scenarios;

/// <summary>
/// Finds the folder of a catalogue that a scenario names. A path is taken from the run's folder; a bare name is looked for near the run first and in the
/// program's own folder last, so that a run works wherever it lies and a builder's own catalogue goes before the one that came with the program.
/// </summary>
public static class CatalogueFolders
{
    private const string Home = "catalogs";

    /// <summary>The folder, or null where there is none.</summary>
    /// <param name="run">The run's folder.</param>
    /// <param name="named">What the scenario says: a path, or a name such as starter.</param>
    /// <returns>A path as short as the person's own words allow.</returns>
    public static string? Find(string run, string named) => Places(run, named).FirstOrDefault(Directory.Exists);

    /// <summary>Where an input of a run lies, by the name under which it was stored.</summary>
    /// <param name="run">The run's folder.</param>
    /// <param name="file">The name, for instance starter/barrels.csv.</param>
    public static string FileOf(string run, string file)
    {
        var path = Path.Combine(run, file);
        return !File.Exists(path) && file.Split('/') is [var name, var inside] && Find(run, name) is { } folder ? Path.Combine(folder, inside) : path;
    }

    /// <summary>True for a bare name, which is looked for in several places.</summary>
    /// <param name="named">What the scenario says.</param>
    internal static bool IsName(string named) => named.Length > 0 && named[0] != '.' && named.AsSpan().IndexOfAny('/', '\\', ':') < 0;

    /// <summary>What is told of a folder that is nowhere.</summary>
    /// <param name="run">The run's folder.</param>
    /// <param name="named">What the scenario says.</param>
    internal static string Missing(string run, string named)
    {
        if (IsName(named))
            return $"a catalogue of this name; there is none beside the run, in '{Path.Combine(Path.GetFullPath(run), "..", "..", Home)}' or with the program";
        var name = Path.GetFileName(named.TrimEnd('/', '\\'));
        var isNear = IsName(name) && Find(run, name) is not null;
        return "a folder of catalogue files; there is none of this name" + (isNear ? $" (write \"{name}\" alone: there is one of this name)" : "");
    }

    private static IEnumerable<string> Places(string run, string named)
    {
        yield return Path.Combine(run, named);
        if (!IsName(named))
            yield break;
        yield return Path.Combine(run, Home, named);
        yield return Path.Combine(run, "..", named);
        yield return Path.Combine(run, "..", Home, named);
        yield return Path.Combine(run, "..", "..", Home, named);
        yield return Path.Combine(AppContext.BaseDirectory, Home, named);
    }
}
