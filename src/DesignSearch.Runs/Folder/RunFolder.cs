using DesignSearch.Runs.Store;

namespace DesignSearch.Runs.Folder;

/// <summary>A run: a folder whose scenario.toml goes in and whose results come out beside it.</summary>
/// <param name="path">The folder.</param>
public sealed class RunFolder(string path)
{
    /// <summary>The folder as the person named it.</summary>
    public string Path { get; } = path.TrimEnd('/', '\\') is { Length: > 0 } trimmed ? trimmed : path;

    /// <summary>What goes in.</summary>
    public string Scenario => At("scenario.toml");

    /// <summary>Everything a finished search leaves.</summary>
    public string RunFile => At("run.json");

    /// <summary>Every simulated layout, for resuming.</summary>
    public string Journal => At("journal");

    /// <summary>The page to open.</summary>
    public string Report => At("report.html");

    /// <summary>Folder of the shopping lists and their layouts.</summary>
    public string Lists => At(ListFile.Folder);

    /// <summary>True when a search has ended here.</summary>
    public bool IsFinished => File.Exists(RunFile);

    /// <summary>True when a search was begun and can be taken up.</summary>
    public bool HasJournal => File.Exists(Journal);

    /// <summary>A path inside the folder.</summary>
    public string At(string name) => System.IO.Path.Combine(Path, name);
}
