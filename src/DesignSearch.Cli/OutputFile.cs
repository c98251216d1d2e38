using DesignSearch.Files;

namespace DesignSearch.Cli;

/// <summary>Writes the file that an option names, but never over an input or over something that the same option did not write.</summary>
internal static class OutputFile
{
    // So much at the beginning tells a table of hours or a picture of a winter from all else.
    private const int Alike = 33;

    /// <summary>Writes it.</summary>
    /// <param name="option">The option, for instance --picture.</param>
    /// <param name="path">The file.</param>
    /// <param name="content">What goes into it.</param>
    /// <param name="inputs">Files that were read.</param>
    /// <exception cref="InputException">Something else lies there; it is left alone.</exception>
    public static void Write(string option, string path, byte[] content, IEnumerable<string> inputs)
    {
        var expected = Directory.Exists(path) ? "the name of a file; this is a folder"
            : inputs.Any(i => Real(i) == Real(path)) ? "another file than those that are read"
            : IsForeign(path, content) ? "a new name, or that of a file which this option wrote before; here lies something else, which is left alone"
            : "";
        if (expected.Length > 0)
            throw new InputException(new InputFault(option, 0, 0, path, expected));
        SafeFile.Write(path, content);
    }

    /// <summary>Writes a file that must not be there yet.</summary>
    /// <param name="option">The option, for instance --save.</param>
    /// <param name="path">The file.</param>
    /// <param name="content">What goes into it.</param>
    /// <exception cref="InputException">Something lies there; it is left alone.</exception>
    public static void WriteNew(string option, string path, byte[] content)
    {
        RequireNew(option, path);
        SafeFile.Write(path, content);
    }

    /// <summary>Looks, before there is anything to write, whether a name is free.</summary>
    /// <inheritdoc cref="WriteNew"/>
    public static void RequireNew(string option, string path)
    {
        if (Path.GetFileName(path).Length == 0 || Directory.Exists(path))
            throw new InputException(new InputFault(option, 0, 0, path, "the name of a file; this is a folder"));
        if (File.Exists(path) || new FileInfo(path).LinkTarget is not null)
            throw new InputException(new InputFault(option, 0, 0, path, "a new name; here lies something already, which is left alone"));
    }

    private static bool IsForeign(string path, byte[] content)
    {
        if (new FileInfo(path).LinkTarget is not null)
            return true;
        if (!File.Exists(path))
            return false;
        var head = InputFile.Read(path, long.MaxValue, out _);
        return head is null || (head.Length > 0 && !head.AsSpan().StartsWith(content.AsSpan(0, Math.Min(Alike, content.Length))));
    }

    private static string Real(string path)
    {
        var whole = Path.GetFullPath(path);
        try
        {
            return File.ResolveLinkTarget(whole, returnFinalTarget: true)?.FullName ?? whole;
        }
        catch (IOException)
        {
            return whole;
        }
    }
}
