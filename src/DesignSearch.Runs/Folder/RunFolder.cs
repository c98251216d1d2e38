using DesignSearch.Files;
using DesignSearch.Runs.Store;

namespace DesignSearch.Runs.Folder;

/// <summary>A run: a folder whose scenario.toml goes in and whose results come out beside it.</summary>
/// <param name="path">The folder.</param>
public sealed class RunFolder(string path)
{
    private const string NoteName = "searching.txt";
    private const int MostNamed = 12;

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

    /// <summary>Refuses a run that is not there, and names those that are.</summary>
    /// <exception cref="InputException">There is no such folder, or it holds no scenario.</exception>
    public void RequireThere()
    {
        if (File.Exists(Scenario))
            return;
        var beside = Beside();
        var names = beside.Count > 0 ? "; there are " + string.Join(", ", beside.Take(MostNamed)) : "";
        var expected = Directory.Exists(Path) ? "a run folder; this one holds no scenario.toml" : "a run folder; there is none of this name";
        throw new InputException(new InputFault(Path, 0, 0, "", expected + NearWord.Hint(Path, beside) + names + ". 'new FOLDER' makes one"));
    }

    private List<string> Beside()
    {
        var above = System.IO.Path.GetDirectoryName(Path) is { Length: > 0 } named ? named : ".";
        return !Directory.Exists(above) ? [] :
        [
            .. Directory.EnumerateDirectories(above).Where(d => File.Exists(new RunFolder(d).Scenario)).Order(StringComparer.Ordinal)
                .Select(d => above == "." ? System.IO.Path.GetFileName(d) : d),
        ];
    }

    /// <summary>A path inside the folder.</summary>
    public string At(string name) => System.IO.Path.Combine(Path, name);
}
