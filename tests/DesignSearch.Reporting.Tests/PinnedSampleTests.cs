using System.Runtime.InteropServices;
using System.Text;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Store;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>
/// The finished sample in the repository shows what the program writes today: chart, page, lists and pictures, sign by sign. Whoever changes one of them
/// looks at the change and renews the sample with <c>designsearch report runs/sample-finished</c>.
/// </summary>
public sealed class PinnedSampleTests
{
    [SkippableFact]
    public void Pinned_the_sample_in_the_repository_is_what_is_written_from_its_stored_run()
    {
        Skip.IfNot(OperatingSystem.IsLinux() && RuntimeInformation.ProcessArchitecture == Architecture.X64, "Sine and cosine may differ in the last bit on another system.");
        var sample = Repository.At("runs", "sample-finished");
        using var folder = new ScratchFolder();
        Assert.Empty(RunFiles.WriteAll(RunStore.Load(new RunFolder(sample)), folder.Path));
        var written = folder.Files().Where(f => f != "written.txt").ToList();
        Assert.True(written.Count > 50);
        Assert.All(written, f => Assert.Equal(Text(Path.Combine(sample, f)), Text(folder.At(f))));
        var kept = Directory.EnumerateFiles(Path.Combine(sample, "lists")).Select(f => "lists/" + Path.GetFileName(f))
            .Where(f => !f.EndsWith(".toml", StringComparison.Ordinal));
        Assert.Equal(kept.Order(StringComparer.Ordinal), written.Where(f => f.StartsWith("lists/", StringComparison.Ordinal)));
    }

    private static string Text(string path) => path.EndsWith(".png", StringComparison.Ordinal) || path.EndsWith(".xlsx", StringComparison.Ordinal) ? Convert.ToHexString(File.ReadAllBytes(path)) : File.ReadAllText(path, Encoding.UTF8);
}
