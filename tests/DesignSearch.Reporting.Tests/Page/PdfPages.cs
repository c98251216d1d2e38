using System.Diagnostics;
using Xunit;

namespace DesignSearch.Reporting.Tests;

/// <summary>The words on each page of a printed document, by Poppler's text reader.</summary>
internal static class PdfPages
{
    private const string Reader = "/usr/bin/pdftotext";

    /// <summary>One text a page; skips the test where there is no reader, unless skipping is forbidden.</summary>
    public static async Task<IReadOnlyList<string>> Of(byte[] pdf)
    {
        if (!File.Exists(Reader) && Environment.GetEnvironmentVariable("DESIGNSEARCH_NO_SKIP") == "1")
            Assert.Fail($"{Reader} is missing, and DESIGNSEARCH_NO_SKIP forbids to skip.");
        Skip.If(!File.Exists(Reader), $"{Reader} is not installed.");
        using var folder = new ScratchFolder();
        await File.WriteAllBytesAsync(folder.At("print.pdf"), pdf);
        using var process = Process.Start(Reader, ["-layout", folder.At("print.pdf"), folder.At("print.txt")]);
        await process.WaitForExitAsync();
        Assert.Equal(0, process.ExitCode);
        return (await File.ReadAllTextAsync(folder.At("print.txt"))).TrimEnd('\f').Split('\f');
    }
}
