using System.Text.Json;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Asked to stop, a search keeps the best so far and says that it is not the whole.</summary>
public sealed class SignalTests
{
    [SkippableTheory]
    [InlineData(Designsearch.Interrupt, 130)]
    [InlineData(Designsearch.Terminate, 143)]
    [InlineData(Designsearch.HangUp, 129)]
    public void A_stopped_search_leaves_a_partial_report_with_a_banner_and_can_be_taken_up(int signal, int code)
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Signals are sent the way of Linux.");
        using var run = ShortWinter.WithFewUnseen();
        var process = Designsearch.Start(Designsearch.Answering, [], "search", run.Folder, "--evaluations", "100000");
        var journal = Path.Combine(run.Folder, "journal");
        Assert.True(SpinWait.SpinUntil(() => File.Exists(journal) && new FileInfo(journal).Length > 20_000, TimeSpan.FromSeconds(60)));
        Designsearch.Signal(process, signal);
        var ended = Designsearch.Wait(process).With(code);
        Assert.Contains("keeping what was found so far", ended.Error, StringComparison.Ordinal);
        using var stored = JsonDocument.Parse(File.ReadAllText(Path.Combine(run.Folder, "run.json")));
        Assert.True(stored.RootElement.GetProperty("search").GetProperty("isPartial").GetBoolean());
        Assert.Contains("Stopped early.", File.ReadAllText(Path.Combine(run.Folder, "report.html")), StringComparison.Ordinal);
        var whole = File.ReadAllText(journal);
        var found = stored.RootElement.GetProperty("search").GetProperty("evaluations").GetInt32();
        Assert.InRange(found, 16, 99_999);
        var other = Inside.Run("search", run.Folder, "--resume", "--evaluations", "100", "--quiet").With(2);
        Assert.Contains("--evaluations then covered every layout there is", other.Error, StringComparison.Ordinal);
        Assert.Equal(whole, File.ReadAllText(journal));
        Inside.Run("search", run.Folder, "--resume", "--evaluations", "100000", "--quiet").With(0);
        Assert.StartsWith(whole, File.ReadAllText(journal), StringComparison.Ordinal);
    }

    [SkippableTheory]
    [InlineData(Designsearch.Interrupt, 130)]
    [InlineData(Designsearch.Terminate, 143)]
    [InlineData(Designsearch.HangUp, 129)]
    public void Stopped_before_the_first_layout_it_says_so_in_a_sentence(int signal, int code)
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Signals are sent the way of Linux.");
        using var run = ShortWinter.WithFewUnseen();
        var process = Designsearch.Start(Designsearch.Answering, [], "search", run.Folder);
        // The first sign of life comes after the answer to signals stands.
        var first = process.StandardError.ReadLine();
        Designsearch.Signal(process, signal);
        Designsearch.Wait(process).With(code);
        Assert.StartsWith("Reading", first, StringComparison.Ordinal);
    }
}
