using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>
/// A command within the test's own process, by the same command tree and with the same exit codes: what a process of its own adds is a second of starting. For
/// whatever does not ask for signals, streams, rights or a second process.
/// </summary>
internal static class Inside
{
    /// <summary>Runs it to its end. A search leaves out the proof of its first answer, as one started by <see cref="Designsearch"/> does.</summary>
    public static Designsearch.Ended Run(params string[] words)
    {
        var (code, output, error) = Cli.Tests.Cli.Run([.. words, .. words is ["search", ..] ? ["--no-proof"] : Array.Empty<string>()]);
        return new(code, output, error);
    }

    /// <summary>Runs it, and fails where it goes on for longer.</summary>
    public static Designsearch.Ended RunWithin(TimeSpan patience, params string[] words)
    {
        // A thread of its own: one that waits for a pipe for ever takes none away from the others.
        var run = Task.Factory.StartNew(() => Run(words), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        Assert.True(run.Wait(patience), "It hangs: " + string.Join(' ', words));
        return run.Result;
    }
}
