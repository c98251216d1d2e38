using System.Collections.Concurrent;
using System.Diagnostics;
using System.Runtime.Versioning;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>Where the disk is full, locked or forbidden, the inputs gone, or the language another: one sentence, the right code, nothing half-written.</summary>
public sealed class PlaceTests
{
    private const string AsNobody = "65534";

    // What each command says in the language of this machine, asked once for all the others.
    private static readonly ConcurrentDictionary<string, Designsearch.Ended> Here = new();

    // The journal, the lists, the stored run and the page each meet the end of the disk once.
    [SkippableTheory]
    [InlineData(16)]
    [InlineData(120)]
    [InlineData(400)]
    [InlineData(700)]
    public void A_full_disk_ends_in_four_with_a_sentence(int kilobytes)
    {
        var script = $"mount -t tmpfs -o size={kilobytes}k none \"$RUN\" && cp \"$KEPT/scenario.toml\" \"$RUN\" || exit 99; \"$@\"; code=$?; cp -r \"$RUN/.\" \"$KEPT\"; exit $code";
        using var run = ShortWinter.WithFewUnseen();
        using var kept = ShortWinter.WithFewUnseen();
        string[] launcher = ["unshare", "--mount", "--map-root-user", "/bin/sh", "-c", script, "sh"];
        Skip.IfNot(OperatingSystem.IsLinux(), "A small disk is made the way of Linux.");
        var ended = Designsearch.RunIn(launcher, [("RUN", run.Folder), ("KEPT", kept.Folder)], "search", run.Folder, "--evaluations", "96", "--quiet");
        Skip.If(ended.Code is 99 or 1, "No small disk can be made here: " + ended.Error);
        OneSentence(ended.With(4), "Cannot write");
        Assert.Empty(ended.Output);
        Assert.Empty(Directory.EnumerateFiles(kept.Folder, "*.tmp", SearchOption.AllDirectories));
        foreach (var (name, end) in new[] { ("report.html", "</html>\n"), ("figures.html", "</html>\n"), ("run.json", "}\n"), ("pareto.svg", "</svg>\n") })
            Assert.True(Path.Combine(kept.Folder, name) is var path && (!File.Exists(path) || File.ReadAllText(path).EndsWith(end, StringComparison.Ordinal)), name);
    }

    // The journal, the lists, the stored run and the page each meet the limit once.
    [SkippableTheory]
    [InlineData(4)]
    [InlineData(24)]
    [InlineData(120)]
    public void A_limit_on_the_size_of_files_ends_in_four_with_a_sentence(int kilobytes)
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "The limit is set the way of Linux.");
        using var run = ShortWinter.WithFewUnseen();
        string[] launcher = ["/bin/bash", "-c", FormattableString.Invariant($"ulimit -f {kilobytes}; exec \"$@\""), "bash"];
        var ended = Designsearch.RunIn(launcher, [("DOTNET_EnableWriteXorExecute", "0")], "search", run.Folder, "--evaluations", "96", "--quiet").With(4);
        OneSentence(ended, "Cannot write");
        Assert.Contains("would become larger", ended.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFiles(run.Folder, "*.tmp", SearchOption.AllDirectories));
    }

    [SkippableTheory]
    [InlineData("parts")]
    [InlineData("--help")]
    [InlineData("--version")]
    public void A_result_that_cannot_be_written_ends_in_four(string word)
    {
        Skip.IfNot(File.Exists("/dev/full"), "There is no /dev/full here.");
        OneSentence(Designsearch.RunIn(["/bin/sh", "-c", "exec \"$@\" >/dev/full", "sh"], [], word, "-q").With(4), "Cannot write");
        Designsearch.RunIn(["/bin/sh", "-c", "exec \"$@\" 2>/dev/full", "sh"], [], "parts").With(0);
    }

    [SkippableFact]
    [SupportedOSPlatform("linux")]
    public void A_folder_that_may_only_be_read_ends_in_four_with_a_sentence()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Rights are lowered the way of Linux.");
        using var run = ShortWinter.WithFewUnseen();
        File.SetUnixFileMode(run.Folder, UnixFileMode.UserRead | UnixFileMode.UserExecute | UnixFileMode.GroupRead | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);
        // Nothing is forbidden to root, so it steps down first.
        string[] launcher = Environment.UserName == "root" ? ["setpriv", "--reuid", AsNobody, "--regid", AsNobody, "--clear-groups"] : [];
        OneSentence(Designsearch.RunIn(launcher, [("HOME", "/tmp")], "search", run.Folder, "--quiet").With(4), "Cannot write");
        Assert.Equal(["scenario.toml"], Directory.EnumerateFileSystemEntries(run.Folder).Select(Path.GetFileName));
        File.SetUnixFileMode(run.Folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    // All three streams, or one of them.
    [SkippableTheory]
    [InlineData("<&- >&- 2>&-", 0)]
    [InlineData("2>&-", 0)]
    [InlineData(">&-", 4)]
    [InlineData(">/dev/full", 4)]
    public void A_search_whose_streams_are_closed_keeps_its_results(string closed, int code)
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Streams are closed the way of Linux.");
        using var run = ShortWinter.Make();
        var ended = Designsearch.RunIn(["/bin/sh", "-c", $"exec \"$@\" {closed}", "sh"], [], "search", run.Folder, "--evaluations", "64", "--quiet").With(code);
        Assert.True(File.Exists(Path.Combine(run.Folder, "report.html")));
        Assert.False(File.Exists(Path.Combine(run.Folder, "searching.txt")));
        if (code == 4)
            Assert.Contains("standard output", ended.Error, StringComparison.Ordinal);
    }

    [SkippableFact]
    public void A_run_that_vanishes_in_the_middle_ends_in_a_sentence()
    {
        Skip.If(OperatingSystem.IsWindows(), "Windows does not let a file go that is in use.");
        using var run = ShortWinter.WithFewUnseen();
        var process = Designsearch.Start([], [], "search", run.Folder, "--evaluations", "3000", "--quiet");
        Assert.True(SpinWait.SpinUntil(() => File.Exists(Path.Combine(run.Folder, "journal")), TimeSpan.FromSeconds(60)));
        // A note that is written meanwhile makes the first try fail.
        Assert.True(SpinWait.SpinUntil(() => Gone(run.Folder), TimeSpan.FromSeconds(10)));
        OneSentence(Designsearch.Wait(process).With(4), "Cannot write");
        Assert.False(Directory.Exists(run.Folder));
        Directory.CreateDirectory(run.Folder);
    }

    private static bool Gone(string folder)
    {
        try
        {
            Directory.Delete(folder, recursive: true);
            return true;
        }
        catch (DirectoryNotFoundException)
        {
            return true;
        }
        catch (IOException)
        {
            return false;
        }
    }

    [SkippableTheory]
    [InlineData("de_DE.UTF-8")]
    [InlineData("fr_FR.UTF-8")]
    [InlineData("tr_TR.UTF-8")]
    public void Every_language_of_the_machine_gets_the_same_bytes(string language)
    {
        (string, string?)[] there = [("LANG", language), ("LC_ALL", language), ("LANGUAGE", language[..2]), ("TERM", null)];
        var layout = Directory.EnumerateFiles(Repository.At("runs", "sample-finished", "lists"), "*-bare.toml").Single();
        foreach (var words in new[] { new[] { "simulate", "runs/sample-finished", "--layout", layout }, ["parts"], ["--help"], ["check", "no-such-run"], ["search", "--seed", "1,5", "x"] })
        {
            var (here, abroad) = (Here.GetOrAdd(string.Join('\n', words), _ => Designsearch.Run(words)), Designsearch.RunIn([], there, words));
            Assert.Equal((here.Code, here.Output, Once(here.Error)), (abroad.Code, abroad.Output, Once(abroad.Error)));
        }
    }

    // Where much else goes on the line that says what is done comes again after ten seconds.
    private static string Once(string error) => string.Join('\n', error.Split('\n').DistinctBy(l => l.Split(" …")[0]));

    [SkippableFact]
    public void Without_any_terminal_it_writes_plain_lines_and_no_colours()
    {
        Skip.IfNot(OperatingSystem.IsLinux(), "Started the way of Linux.");
        using var run = ShortWinter.Make();
        var ended = Designsearch.RunIn(["setsid", "--wait"], [("TERM", null), ("NO_COLOR", "1")], "search", run.Folder, "--evaluations", "96").With(0);
        Assert.DoesNotContain('\u001b', ended.Output + ended.Error);
        Assert.DoesNotContain('\r', ended.Output + ended.Error);
        Assert.StartsWith("To hold", ended.Output, StringComparison.Ordinal);
    }

    [SkippableTheory]
    [InlineData("dumb", "")]
    [InlineData("xterm", "\r")]
    public void In_a_terminal_a_line_is_rewritten_unless_the_terminal_is_dumb(string kind, string rewritten)
    {
        Skip.IfNot(File.Exists("/usr/bin/script"), "No program here makes a terminal.");
        using var run = ShortWinter.Make();
        var said = Path.Combine(run.Folder, "said");
        var command = $"dotnet {Path.Combine(AppContext.BaseDirectory, "designsearch.dll")} search {run.Folder} --evaluations 96 >/dev/null";
        using var process = Process.Start(new ProcessStartInfo("/usr/bin/script", ["-qefc", command, said]) { Environment = { ["TERM"] = kind, ["CI"] = null, ["NO_COLOR"] = "1" }, RedirectStandardOutput = true, RedirectStandardInput = true, WorkingDirectory = Repository.Root })!;
        process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(TimeSpan.FromSeconds(60)));
        var lines = File.ReadAllText(said).Replace("\r\n", "\n", StringComparison.Ordinal);
        Assert.Contains("Reading the scenario", lines, StringComparison.Ordinal);
        Assert.Equal(rewritten.Length > 0, lines.Contains("\rReading", StringComparison.Ordinal) || lines.Contains('\r'));
        Assert.DoesNotContain("\u001b[3", lines, StringComparison.Ordinal);
    }

    private static void OneSentence(Designsearch.Ended ended, string beginning)
    {
        var line = Assert.Single(ended.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.StartsWith(beginning, line, StringComparison.Ordinal);
    }
}
