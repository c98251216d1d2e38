namespace DesignSearch.Files;

/// <summary>Files that may grow no further.</summary>
public static class FileLimit
{
    /// <summary>Writes; a file that would become larger than the system or the account allows is told like any other file that cannot be written.</summary>
    /// <param name="path">The file, for the message.</param>
    /// <param name="write">Writes to it.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static void Guard(string path, Action write)
    {
        try
        {
            write();
        }
        catch (ArgumentOutOfRangeException e)
        {
            // The runtime tells the limit on a file's size in this odd way.
            throw new IOException($"'{path}' would become larger than this system or account allows.", e);
        }
    }
}
