using System.Security.Cryptography;

namespace DesignSearch.Runs;

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
    public static IReadOnlyList<StoredInput> Of(IEnumerable<(string Name, string Path)> files) => [.. files.Select(f => new StoredInput(f.Name, Of(f.Path)))];
}
