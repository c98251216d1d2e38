namespace DesignSearch.Files;

/// <summary>Opens files that people name: only plain ones, and no more of them than they may hold. A pipe, a device or a folder ends in words, never in waiting.</summary>
public static class InputFile
{
    // A pipe that nobody writes to would be waited for without end.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    /// <summary>Reads a whole file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="most">Greatest size [bytes].</param>
    /// <param name="expected">What should be there where it cannot be read, as a fault says it; else empty.</param>
    /// <returns>Its bytes; null where it cannot be read.</returns>
    public static byte[]? Read(string path, long most, out string expected)
    {
        try
        {
            expected = WhyNot(path, most);
            return expected.Length > 0 ? null : File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            expected = "a file of this name; there is none";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            expected = "a file that can be read: " + e.Message.ReplaceLineEndings(" ");
        }

        return null;
    }

    /// <summary>Why a file cannot be an input, as a fault says what was expected; empty where it can.</summary>
    /// <param name="path">The file.</param>
    /// <param name="most">Greatest size [bytes].</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static string WhyNot(string path, long most)
    {
        if (Directory.Exists(path))
            return "a file of this name, but it is a folder";
        var file = new FileInfo(path);
        // A link is there even where what it leads to is not.
        var real = file.ResolveLinkTarget(returnFinalTarget: true) as FileInfo ?? file;
        if (!real.Exists)
            return file.LinkTarget is null ? "a file of this name; there is none" : "a file of this name, but it is a link to one that is not there";
        if (real.Length > most)
            return FormattableString.Invariant($"a file of at most {most / 1_000_000} MB, not of {real.Length / 1e6:0.0}");
        return real.Length > 0 || HoldsNothing(path) ? "" : "a plain file, not a pipe or a device";
    }

    // Pipes and devices tell no size, like an empty file, and cannot be told from one but by trying.
    private static bool HoldsNothing(string path)
    {
        var empty = false;
        Exception? failure = null;
        var look = new Thread(() =>
        {
            try
            {
                using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
                empty = stream.CanSeek && stream.ReadByte() < 0;
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
            {
                failure = e;
            }
        })
        { IsBackground = true };
        look.Start();
        if (!look.Join(Patience))
            return false;
        // What is in use or cannot be read says so when it is read.
        return failure is not null || empty;
    }
}
