using System.CommandLine;
using System.CommandLine.Invocation;
using System.Runtime.InteropServices;
using DesignSearch.Cli;

Console.OutputEncoding = System.Text.Encoding.UTF8;
var live = !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") is not (null or "dumb") && Environment.GetEnvironmentVariable("CI") is null;
var session = new Session(Console.Out, Console.Error, live);
var parsed = CommandTree.Build(session).Parse(args);
if (parsed.Action is ParseErrorAction || (parsed.Errors.Count > 0 && parsed.Action is not SynchronousCommandLineAction { ClearsParseErrors: true }))
    return Usage.Explain(parsed, Console.Error);

using var stop = new CancellationTokenSource();
var signals = 0;
void OnSignal(PosixSignalContext context)
{
    if (Interlocked.Increment(ref signals) > 1)
        return;
    context.Cancel = true;
    session.StopCode = context.Signal == PosixSignal.SIGTERM ? ExitCode.Terminated : ExitCode.Interrupted;
    Console.Error.WriteLine();
    Console.Error.WriteLine("Stopping after this block and keeping the best so far; press Ctrl+C again to quit at once.");
    stop.Cancel();
}

using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, OnSignal);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, OnSignal);
return await parsed.InvokeAsync(new InvocationConfiguration { ProcessTerminationTimeout = null }, stop.Token);
