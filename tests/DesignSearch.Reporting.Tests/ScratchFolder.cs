namespace DesignSearch.Reporting.Tests;

/// <summary>An empty folder that goes away after the test.</summary>
internal sealed class ScratchFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("designsearch-").FullName;

    public string At(params string[] parts) => System.IO.Path.Combine([Path, .. parts]);

    public string[] Files() => [.. Directory.EnumerateFiles(Path, "*", SearchOption.AllDirectories).Select(f => System.IO.Path.GetRelativePath(Path, f).Replace('\\', '/')).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
