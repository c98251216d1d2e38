using DesignSearch.Files;

namespace DesignSearch.Runs.Folder;

/// <summary>
/// One writer a folder: whoever writes results holds the journal for itself alone. The system lets go of it when the process ends, however
/// it ends. Beside it lies a note that says who holds it; the note alone decides nothing.
/// </summary>
public static class FolderHold
{
    private const string Opening = "A search is at work here, or was broken off";
    private const int LongestNote = 300;
    private static readonly int[] InUse = OperatingSystem.IsWindows() ? [32, 33] : OperatingSystem.IsLinux() ? [11] : [35];

    /// <summary>Opens a journal for this process alone.</summary>
    /// <exception cref="IOException">Another process holds it: who, and how to go on; or it cannot be opened.</exception>
    public static FileStream Open(string journal, FileMode mode, FileAccess access)
    {
        try
        {
            return new FileStream(journal, mode, access, FileShare.None);
        }
        catch (IOException e) when (InUse.Contains(e.HResult & 0xFFFF) || (mode == FileMode.CreateNew && File.Exists(journal)))
        {
            throw new IOException(
                $"'{Path.GetDirectoryName(journal)}' belongs to a search that is under way{Holder(journal)}. "
                    + "Wait for it or stop it with Ctrl+C; for another search at the same time copy scenario.toml into a folder of its own.",
                e);
        }
    }

    /// <summary>Holds a folder for writing results that were found before; null where no search ever began in it.</summary>
    /// <exception cref="IOException">Another process holds it.</exception>
    public static IDisposable? Of(RunFolder folder) => folder.HasJournal ? Open(folder.Journal, FileMode.Open, FileAccess.Read) : null;

    /// <summary>Leaves the note. It stays where the process is killed, and tells that the journal is newer than the results.</summary>
    /// <exception cref="DirectoryNotFoundException">The folder went away; it is not made anew.</exception>
    public static void Begin(RunFolder folder, string holder) => SafeFile.WriteWhereFolderIs(folder.UnderWay, $"{Opening}: {holder}.\n");

    /// <summary>Takes the note away.</summary>
    public static void End(RunFolder folder) => File.Delete(folder.UnderWay);

    /// <summary>True where the note's place is free or holds a note.</summary>
    public static bool IsNoteOrFree(RunFolder folder) => !Path.Exists(folder.UnderWay) || Note(folder.UnderWay).StartsWith(Opening, StringComparison.Ordinal);

    private static string Holder(string journal)
    {
        var note = Note(RunFolder.NoteBeside(journal));
        return note.StartsWith(Opening + ": ", StringComparison.Ordinal) ? $" ({note[(Opening.Length + 2)..].Trim().TrimEnd('.')})" : "";
    }

    private static string Note(string path) => InputFile.Read(path, LongestNote, out _) is { } bytes ? System.Text.Encoding.UTF8.GetString(bytes) : "";
}
