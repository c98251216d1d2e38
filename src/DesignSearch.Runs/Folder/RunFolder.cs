using DesignSearch.Runs.Store;

namespace DesignSearch.Runs.Folder;

/// <summary>A run: a folder whose scenario.toml goes in and whose results come out beside it.</summary>
/// <param name="path">The folder.</param>
public sealed class RunFolder(string path)
{
    private const string NoteName = "searching.txt";

    /// <summary>The folder as the person named it.</summary>
    public string Path { get; } = path.TrimEnd('/', '\\') is { Length: > 0 } trimmed ? trimmed : path;

    /// <summary>What goes in.</summary>
    public string Scenario => At("scenario.toml");

    /// <summary>Everything a finished search leaves.</summary>
    public string RunFile => At("run.json");

    /// <summary>Every simulated layout, for resuming.</summary>
    public string Journal => At("journal");

    /// <summary>Note of a search that is under way or was broken off.</summary>
    public string UnderWay => At(NoteName);

    /// <summary>Names of the files that searches wrote.</summary>
    public string Written => At("written.txt");

    /// <summary>The page to open.</summary>
    public string Report => At("report.html");

    /// <summary>Folder of the shopping lists and their layouts.</summary>
    public string Lists => At(ListFile.Folder);

    /// <summary>True when a search has ended here.</summary>
    public bool IsFinished => File.Exists(RunFile);

    /// <summary>True when a search was begun and can be taken up.</summary>
    public bool HasJournal => File.Exists(Journal);

    /// <summary>True when the journal is newer than the results: a search was broken off, or is under way.</summary>
    public bool IsBrokenOff => HasJournal && (!IsFinished || File.Exists(UnderWay));

    /// <summary>Path of the note that belongs to a journal.</summary>
    public static string NoteBeside(string journal) => System.IO.Path.Combine(System.IO.Path.GetDirectoryName(journal) ?? "", NoteName);

    /// <summary>A path inside the folder.</summary>
    public string At(string name) => System.IO.Path.Combine(Path, name);
}
