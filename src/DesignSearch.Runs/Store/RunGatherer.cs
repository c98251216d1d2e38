using DesignSearch.Files;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Runs.Store;

/// <summary>Goes through a folder of run folders. Many searches, on one machine or on many, come together here.</summary>
public static class RunGatherer
{
    /// <summary>Every run below a folder, in the order of their names; the folder itself where it is one.</summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="InputException">It is no folder, or holds no run.</exception>
    public static IReadOnlyList<GatheredRun> Of(string folder)
    {
        const string expected = "a folder that holds runs, each a folder with a scenario.toml";
        if (!Directory.Exists(folder))
            throw new InputException(new InputFault(folder, 0, 0, "", expected));
        // A link may lead round in a circle.
        var reach = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint, IgnoreInaccessible = true };
        var runs = Directory.EnumerateDirectories(folder, "*", reach).Prepend(folder)
            .Where(d => File.Exists(new RunFolder(d).Scenario))
            .Select(d => (Path: d, Name: Path.GetRelativePath(folder, d).Replace('\\', '/')))
            .OrderBy(d => d.Name, StringComparer.Ordinal)
            .Select(d => One(new(d.Path), d.Name)).ToList();
        return runs.Count > 0 ? runs : throw new InputException(new InputFault(folder, 0, 0, "", expected));
    }

    private static GatheredRun One(RunFolder folder, string name)
    {
        if (!folder.IsFinished)
            return new(name, folder.HasJournal ? "under way" : "not begun", null, folder.HasJournal ? "'search --resume' goes on with one that was broken off" : "");
        try
        {
            var run = RunStore.Load(folder);
            return new(name, "finished", run, string.Join(' ', RunAge.Of(folder, run)));
        }
        catch (InputException e)
        {
            return new(name, "unreadable", null, string.Join(' ', e.Faults));
        }
    }
}
