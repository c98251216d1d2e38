using System.Diagnostics;
using System.Net.Sockets;
using Xunit;

namespace DesignSearch.Files.Tests;

/// <summary>What may be read as an input, up to its greatest size, and how anything else is told.</summary>
public sealed class InputFileTests : IDisposable
{
    private const string None = "a file of this name; there is none";

    private readonly string folder = Directory.CreateTempSubdirectory("designsearch-input-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2_000_000)]
    public void A_plain_file_is_read_to_its_greatest_size_and_an_empty_one_too(int size)
    {
        var path = Path.Combine(folder, "a.toml");
        var content = Enumerable.Range(0, size).Select(i => (byte)i).ToArray();
        File.WriteAllBytes(path, content);
        Assert.Equal(content, InputFile.Read(path, 2_000_000, out var expected));
        Assert.Equal("", expected);
    }

    [Fact]
    public void A_byte_too_many_is_told_with_both_sizes()
    {
        var path = Path.Combine(folder, "a.toml");
        File.WriteAllBytes(path, new byte[2_300_001]);
        Assert.Null(InputFile.Read(path, 2_300_000, out var expected));
        Assert.Equal("a file of at most 2 MB, not of 2.3", expected);
    }

    [Fact]
    public void What_is_no_file_is_told()
    {
        Assert.Equal(None, Told(Path.Combine(folder, "none.toml")));
        Assert.Equal(None, Told(Path.Combine(folder, "none", "none.toml")));
        Assert.Equal("a file of this name, but it is a folder", Told(folder));
        Assert.StartsWith("a file that can be read: ", Told(""), StringComparison.Ordinal);
    }

    [SkippableFact]
    public void A_link_is_the_file_it_leads_to()
    {
        Skip.If(OperatingSystem.IsWindows(), "Links need rights there that few have.");
        var (path, link, far) = (Path.Combine(folder, "a.toml"), Path.Combine(folder, "link"), Path.Combine(folder, "far"));
        File.WriteAllBytes(path, new byte[1_100_000]);
        File.CreateSymbolicLink(link, path);
        File.CreateSymbolicLink(far, link);
        Assert.Equal(1_100_000, InputFile.Read(far, 1_100_000, out _)!.Length);
        Assert.Null(InputFile.Read(far, 1_000_000, out var tooLarge));
        Assert.Equal("a file of at most 1 MB, not of 1.1", tooLarge);
        File.Delete(path);
        Assert.Equal("a file of this name, but it is a link to one that is not there", Told(far));
        Assert.Equal("a file of this name, but it is a link to one that is not there", Told(link));
    }

    [SkippableFact]
    public void A_pipe_that_nobody_writes_to_and_a_device_without_end_are_told_in_time()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "The pipe is made and the device named the way of Linux.");
        var pipe = Path.Combine(folder, "pipe");
        using (var made = Process.Start("mkfifo", [pipe]))
            made.WaitForExit();
        var clock = Stopwatch.StartNew();
        Assert.Equal("a plain file, not a pipe or a device", Told(pipe));
        Assert.Equal("a plain file, not a pipe or a device", Told("/dev/zero"));
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 20);
    }

    [SkippableFact]
    public void A_file_that_cannot_be_read_says_so()
    {
        Skip.If(OperatingSystem.IsWindows(), "A socket is no file there.");
        var path = Path.Combine(folder, "a.toml");
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(path));
        Assert.StartsWith("a file that can be read: ", Told(path), StringComparison.Ordinal);
    }

    private static string Told(string path)
    {
        Assert.Null(InputFile.Read(path, 1000, out var expected));
        return expected;
    }
}
