using System.Security.Cryptography;
using DesignSearch.Files;
using DesignSearch.Runs.Store;

namespace DesignSearch.Runs.Folder;

/// <summary>Hashes of the files that went into a run.</summary>
public static class FileHash
{
    /// <summary>SHA-256 of a file's bytes, lower-case hexadecimal.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static string Of(string path)
    {
        using var stream = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    /// <summary>The files of a scenario with their hashes, in the order they were read.</summary>
    /// <exception cref="InputException">One of them can no longer be read.</exception>
    public static IReadOnlyList<StoredInput> Of(IEnumerable<(string Name, string Path)> files) => [.. files.Select(f => new StoredInput(f.Name, OfInput(f.Path)))];

    private static string OfInput(string path)
    {
        try
        {
            return Of(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new InputException(new InputFault(path, 0, 0, "", "a file that stays where it is until the search has begun; it could be read a moment ago and no longer can"));
        }
    }
}
