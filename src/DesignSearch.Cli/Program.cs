using System.CommandLine;
using System.CommandLine.Invocation;
using System.Runtime.InteropServices;
using System.Text;
using DesignSearch.Cli;
using DesignSearch.Cli.Terminal;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
var error = VisibleWriter.Over(new LenientWriter(Console.Error), "the error stream");
var session = new Session(Console.Out, error, ErrorTerminal.CanRewrite) { IsTyped = !Console.IsInputRedirected, IsShown = !Console.IsOutputRedirected };
var parsed = CommandTree.Build(session).Parse(args);
if (parsed.Action is ParseErrorAction || (parsed.Errors.Count > 0 && parsed.Action is not SynchronousCommandLineAction { ClearsParseErrors: true }))
    return Usage.Explain(parsed, error);

using var stop = new CancellationTokenSource();
var signals = 0;
void OnSignal(PosixSignalContext context)
{
    if (Interlocked.Increment(ref signals) > 1)
        return;
    context.Cancel = true;
    session.StopCode = context.Signal switch { PosixSignal.SIGTERM => ExitCode.Terminated, PosixSignal.SIGHUP => ExitCode.HungUp, _ => ExitCode.Interrupted };
    error.WriteLine();
    error.WriteLine("Stopping and keeping what was found so far; press Ctrl+C again to quit at once.");
    stop.Cancel();
}

using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, OnSignal);
using var hangUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, OnSignal);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, OnSignal);
// Past a limit on the size of files the system would kill the program; like this the write fails, and a sentence says so.
const int FileSizeSignal = 25;
using var fileSize = OperatingSystem.IsWindows() ? null : PosixSignalRegistration.Create((PosixSignal)FileSizeSignal, context => context.Cancel = true);
try
{
    return await parsed.InvokeAsync(new InvocationConfiguration { ProcessTerminationTimeout = null, EnableDefaultExceptionHandler = false, Error = error }, stop.Token);
}
catch (Exception e)
{
    return session.Fail(parsed, e);
}
