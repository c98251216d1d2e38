using DesignSearch.Files;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Words;
using DesignSearch.Runs.Store;

namespace DesignSearch.Runs.Folder;

/// <summary>Says whether a stored run is still that of the files beside it.</summary>
public static class RunAge
{
    private const long MostBytes = 200_000_000;
    private const int MostNamed = 4;

    /// <summary>A sentence for each thing that is newer than the run; none where nothing is.</summary>
    /// <param name="folder">The run's folder.</param>
    /// <param name="run">What is stored in it.</param>
    public static IReadOnlyList<string> Of(RunFolder folder, StoredRun run)
    {
        var said = new List<string>();
        // A whole catalogue that lies elsewhere is one thing, not forty.
        var changed = run.Inputs.Where(i => HasChanged(folder, i)).GroupBy(i => Path.GetDirectoryName(i.File) ?? "", StringComparer.Ordinal)
            .SelectMany(g => g.Count() > MostNamed ? [$"{Written.Count(g.Count(), "file")} of '{g.Key.Replace('\\', '/')}'"] : g.Select(i => $"'{i.File}'")).ToList();
        // A fit that came after the search was not used by it, and nothing that was read went away.
        if (!run.Inputs.Any(i => i.File == FittedReading.FileName) && File.Exists(folder.At(FittedReading.FileName)))
            changed.Add($"'{FittedReading.FileName}'");
        if (changed.Count > 0)
            said.Add($"Since this search {string.Join(", ", changed)} changed or went away; what is told here is the result from before. 'search --force' makes a new one.");
        if (folder.IsBrokenOff)
            said.Add("A later search was broken off in this folder; what is told here is the result from before. 'search --resume' takes it up.");
        return said;
    }

    private static bool HasChanged(RunFolder folder, StoredInput input)
    {
        try
        {
            var path = CatalogueFolders.FileOf(folder.Path, input.File);
            return InputFile.WhyNot(path, MostBytes).Length > 0 || FileHash.Of(path) != input.Sha256;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return true;
        }
    }
}
