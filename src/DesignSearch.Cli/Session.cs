using System.CommandLine;
using System.Reflection;
using System.Text.Json;
using DesignSearch.Files;
using DesignSearch.Runs;

namespace DesignSearch.Cli;

/// <summary>What all commands share: the streams, the common options, and how failures end.</summary>
/// <param name="output">Results go here, and nothing else.</param>
/// <param name="error">Progress, warnings and faults go here.</param>
/// <param name="live">True when the error stream is a terminal that can rewrite a line.</param>
public sealed class Session(TextWriter output, TextWriter error, bool live)
{
    /// <summary>Version of the program.</summary>
    public static string Version { get; } = typeof(Session).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "0";

    /// <summary>Results go here.</summary>
    public TextWriter Out => output;

    /// <summary>Faults go here.</summary>
    public TextWriter Error => error;

    /// <summary>--json.</summary>
    public Option<bool> Json { get; } = new("--json") { Description = "Write one JSON document to standard output and nothing else there." };

    /// <summary>--quiet.</summary>
    public Option<bool> Quiet { get; } = new("--quiet", "-q") { Description = "No progress; only the result and faults.", Recursive = true };

    /// <summary>Exit code of a search that was stopped: 130 for Ctrl+C, 143 for a request to end.</summary>
    public int StopCode { get; set; } = ExitCode.Interrupted;

    /// <summary>The argument RUN.</summary>
    public static Argument<string> RunArgument() => new("RUN") { Description = "A run: a folder that holds a scenario.toml." };

    /// <summary>A progress line on the error stream.</summary>
    public ProgressLine Progress(ParseResult parsed) => new(error, live, parsed.GetValue(Quiet));

    /// <summary>Writes one JSON document.</summary>
    public void WriteJson<T>(T value) => output.WriteLine(JsonSerializer.Serialize(value, RunStore.Json));

    /// <summary>Runs a command and turns failures into a sentence and an exit code.</summary>
    public int Guarded(Func<int> command)
    {
        try
        {
            return command();
        }
        catch (InputException e)
        {
            foreach (var fault in e.Faults)
                error.WriteLine(fault);
            error.WriteLine(e.Faults.Count == 1 ? "1 fault; nothing was written." : FormattableString.Invariant($"{e.Faults.Count} faults; nothing was written."));
            return ExitCode.BadInput;
        }
        catch (OperationCanceledException)
        {
            error.WriteLine("Stopped before there was a result.");
            return StopCode;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine("Cannot write: " + e.Message.ReplaceLineEndings(" "));
            return ExitCode.CannotWrite;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            error.WriteLine($"A fault of the program itself: {e.GetType().Name}: {e.Message.ReplaceLineEndings(" ")}");
            return ExitCode.Internal;
        }
    }
}
