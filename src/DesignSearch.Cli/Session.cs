using System.CommandLine;
using System.CommandLine.Completions;
using System.Diagnostics;
using System.Reflection;
using System.Runtime.InteropServices;
using System.Text.Json;
using DesignSearch.Cli.Download;
using DesignSearch.Cli.Terminal;
using DesignSearch.Files;
using DesignSearch.Layouts.Words;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Store;

namespace DesignSearch.Cli;

/// <summary>What all commands share: the streams, the common options, and how failures end.</summary>
/// <param name="output">Results go here, and nothing else.</param>
/// <param name="error">Progress, warnings and faults go here.</param>
/// <param name="live">True when the error stream is a terminal that can rewrite a line.</param>
/// <param name="columns">Tells the width of that terminal; null for the width of this process's own.</param>
public sealed class Session(TextWriter output, TextWriter error, bool live, Func<int>? columns = null)
{
    private readonly TextWriter output = VisibleWriter.Over(output, "standard output");
    private readonly TextWriter error = VisibleWriter.Over(error, "the error stream");

    private const int SaidIndent = 2;

    private static readonly JsonSerializerOptions OneLine = new(RunStore.Json) { WriteIndented = false };

    /// <summary>Version of the program.</summary>
    public static string Version { get; } = typeof(Session).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";

    /// <summary>Where standard input is read from.</summary>
    public Func<Stream> In { get; init; } = Console.OpenStandardInput;

    /// <summary>True where results go to a terminal.</summary>
    public bool IsShown { get; init; }

    /// <summary>True where a person types there, who can be asked again.</summary>
    public bool IsTyped { get; init; }

    /// <summary>Makes the service that weather is asked of, when it is asked.</summary>
    public Func<PvgisService> Pvgis { get; init; } = PvgisService.Real;

    /// <summary>Results go here.</summary>
    public TextWriter Out => output;

    /// <summary>Tells the width of the terminal; 80 where there is none.</summary>
    internal Func<int> Columns => columns ?? ErrorTerminal.Width;

    /// <summary>--json.</summary>
    public Option<bool> Json { get; } = new("--json") { Description = "Write one JSON document to standard output and nothing else there." };

    /// <summary>--quiet.</summary>
    public Option<bool> Quiet { get; } = new("--quiet", "-q") { Description = "No progress; only the result and faults.", Recursive = true };

    /// <summary>--verbose.</summary>
    public Option<bool> Verbose { get; } = new("--verbose", "-v")
    {
        Description = "Say on the error stream which files were read, what was done and how long it took.",
        Recursive = true,
    };

    /// <summary>Exit code of a search that was stopped: 130 for Ctrl+C, 143 for a request to end, 129 for a closed terminal.</summary>
    public int StopCode { get; set; } = ExitCode.Interrupted;

    /// <summary>The argument RUN.</summary>
    public static Argument<string> RunArgument()
    {
        var run = new Argument<string>("RUN") { HelpName = "RUN", Description = "A run: a folder that holds a scenario.toml." };
        run.CompletionSources.Add(_ => Runs());
        return run;
    }

    /// <summary>Says something to those who asked for more with --verbose.</summary>
    public void Note(ParseResult parsed, string text)
    {
        if (parsed.GetValue(Verbose))
            error.WriteLine(text);
    }

    /// <summary>Writes one JSON document.</summary>
    public void WriteJson<T>(T value) => output.Write(Escaped(JsonSerializer.Serialize(value, RunStore.Json)) + "\n");

    /// <summary>Writes one JSON document on a line of its own, at once.</summary>
    public void WriteJsonLine<T>(T value)
    {
        output.Write(Escaped(JsonSerializer.Serialize(value, OneLine)) + "\n");
        output.Flush();
    }

    /// <summary>Tells on the error stream what a person should know beside a result.</summary>
    /// <param name="sentences">A line each.</param>
    /// <param name="code">The exit code that goes with them.</param>
    /// <returns>The code.</returns>
    public int Tell(IEnumerable<string> sentences, int code)
    {
        foreach (var sentence in sentences)
            error.WriteLine(sentence);
        return code;
    }

    /// <summary>Writes a sentence of a result, broken between words where a person reads it on a terminal.</summary>
    public void Say(string sentence)
    {
        foreach (var line in IsShown ? Wrapped.Lines(sentence, Math.Min(Columns(), Wrapped.Widest), SaidIndent) : [sentence])
            output.WriteLine(line);
    }

    /// <summary>Runs a command: a first sign of life at once, and failures as a sentence and an exit code.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="beginning">What the command begins with, for instance "Reading the scenario"; empty where it is done at once.</param>
    /// <param name="command">The command; given the progress line, returns the exit code.</param>
    public int Guarded(ParseResult parsed, string beginning, Func<ProgressLine, int> command)
    {
        var line = new ProgressLine(error, live, parsed.GetValue(Quiet), Columns);
        var start = Stopwatch.GetTimestamp();
        try
        {
            Note(parsed, $"designsearch {Version}, {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.RuntimeIdentifier}, {Environment.ProcessorCount} processors");
            if (beginning.Length > 0)
                line.Show(double.NaN, beginning + " …");
            var code = command(line);
            line.End();
            Note(parsed, FormattableString.Invariant($"Ended with code {code} after {Stopwatch.GetElapsedTime(start).TotalSeconds:0.00} s."));
            return code;
        }
        catch (Exception e)
        {
            line.End();
            return Fail(parsed, e);
        }
    }

    /// <summary>Says what went wrong, in a sentence without a stack trace unless --verbose asks for it.</summary>
    /// <returns>The exit code.</returns>
    public int Fail(ParseResult parsed, Exception failure)
    {
        switch (failure)
        {
            case InputException input:
                foreach (var fault in input.Faults)
                    error.WriteLine(fault);
                var all = Written.Count(input.Faults.Count + input.Untold, "fault");
                error.WriteLine(input.Untold > 0 ? $"{all}, of which {input.Faults.Count} are named; nothing was written." : $"{all}; nothing was written.");
                return ExitCode.BadInput;
            case DownloadException:
                error.WriteLine(failure.Message + " Nothing was written.");
                return ExitCode.BadInput;
            case OperationCanceledException:
                error.WriteLine("Stopped before there was a result.");
                return StopCode;
            case IOException or UnauthorizedAccessException:
                error.WriteLine("Cannot write: " + failure.Message.ReplaceLineEndings(" "));
                Note(parsed, failure.ToString());
                return ExitCode.CannotWrite;
            default:
                error.WriteLine($"A fault of the program itself: {failure.GetType().Name}: {failure.Message.ReplaceLineEndings(" ")} (--verbose says more)");
                Note(parsed, failure.ToString());
                return ExitCode.Internal;
        }
    }

    // Inside a document nothing may be replaced: what cannot be seen is escaped, which reads back as it was.
    private static string Escaped(string json) => string.Concat(json.EnumerateRunes().Select(r =>
        r.Value is '\n' or '\r' || !VisibleText.IsHidden(r) ? r.ToString() : string.Concat(r.ToString().Select(c => FormattableString.Invariant($"\\u{(int)c:x4}")))));

    private static IEnumerable<CompletionItem> Runs()
    {
        const string home = "runs";
        return !Directory.Exists(home) ? [] : Directory.EnumerateDirectories(home)
            .Where(d => File.Exists(new RunFolder(d).Scenario)).Order(StringComparer.Ordinal).Select(d => new CompletionItem(d));
    }
}
