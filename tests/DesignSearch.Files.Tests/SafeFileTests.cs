using System.Text;
using Xunit;

namespace DesignSearch.Files.Tests;

/// <summary>Files are written whole or not at all, and nothing else is touched.</summary>
public sealed class SafeFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("designsearch-safe-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void What_is_written_stands_there_in_plain_UTF_8_and_nothing_beside_it()
    {
        var path = Path.Combine(folder, "new", "deep", "list.csv");
        SafeFile.Write(path, "5 °C\n");
        Assert.Equal("5 °C\n"u8.ToArray(), File.ReadAllBytes(path));
        Assert.Equal([path], Directory.GetFileSystemEntries(Path.GetDirectoryName(path)!));
    }

    [Fact]
    public void A_longer_file_is_replaced_whole()
    {
        var path = Path.Combine(folder, "list.csv");
        SafeFile.Write(path, new string('w', 100_000));
        SafeFile.Write(path, [1, 2, 3]);
        Assert.Equal([1, 2, 3], File.ReadAllBytes(path));
        SafeFile.WriteWhereFolderIs(path, "short");
        Assert.Equal("short", File.ReadAllText(path));
        Assert.Single(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_folder_that_must_be_there_is_not_made()
    {
        var path = Path.Combine(folder, "gone", "note.txt");
        Assert.Throws<DirectoryNotFoundException>(() => SafeFile.WriteWhereFolderIs(path, "x"));
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void Where_it_fails_nothing_half_written_is_left()
    {
        var taken = Directory.CreateDirectory(Path.Combine(folder, "taken")).FullName;
        Assert.ThrowsAny<Exception>(() => SafeFile.Write(taken, "x"));
        Assert.Equal([taken], Directory.GetFileSystemEntries(folder));
    }

    [SkippableFact]
    public void What_an_earlier_try_left_is_not_followed_to_another_file()
    {
        Skip.If(OperatingSystem.IsWindows(), "Links need rights there that few have.");
        var (path, other) = (Path.Combine(folder, "list.csv"), Path.Combine(folder, "other.txt"));
        File.WriteAllText(other, "mine");
        File.CreateSymbolicLink(path + ".designsearch.tmp", other);
        SafeFile.Write(path, "list");
        Assert.Equal(("mine", "list"), (File.ReadAllText(other), File.ReadAllText(path)));
        Assert.Null(new FileInfo(path).LinkTarget);
    }

    [Fact]
    public void A_file_that_would_grow_too_large_is_told_like_one_that_cannot_be_written()
    {
        var written = new StringBuilder();
        FileLimit.Guard("list.csv", () => written.Append('x'));
        Assert.Equal("x", written.ToString());
        var told = Assert.Throws<IOException>(() => FileLimit.Guard("list.csv", () => throw new ArgumentOutOfRangeException("length")));
        Assert.Contains("'list.csv' would become larger", told.Message, StringComparison.Ordinal);
    }
}
