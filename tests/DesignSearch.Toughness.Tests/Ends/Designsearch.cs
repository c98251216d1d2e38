using System.Diagnostics;
using System.Runtime.InteropServices;
using DesignSearch.Testing;
using Xunit;

namespace DesignSearch.Toughness.Tests;

/// <summary>The program as a process of its own, as a person starts it.</summary>
internal static partial class Designsearch
{
    public const int Interrupt = 2;
    public const int Kill = 9;
    public const int HangUp = 1;
    public const int GoOn = 18;
    public const int Hold = 19;
    public const int Terminate = 15;

    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "designsearch.dll");

    /// <summary>How it ended and what it said.</summary>
    public sealed record Ended(int Code, string Output, string Error)
    {
        /// <summary>Fails on any other code, and on a stack trace with whatever code.</summary>
        public Ended With(int code)
        {
            Assert.DoesNotContain("   at ", Error, StringComparison.Ordinal);
            Assert.True(Code == code, $"ended with {Code}, not {code}: {Error}{Output}");
            return this;
        }
    }

    /// <summary>Runs it to its end in the root of the checkout.</summary>
    public static Ended Run(params string[] words) => Wait(Start([], [], words));

    /// <summary>Runs it to its end in another surrounding.</summary>
    /// <param name="launcher">Program and words before it, for instance one that lowers its rights.</param>
    /// <param name="environment">Variables to set; null takes one away.</param>
    /// <param name="words">Its own words.</param>
    public static Ended RunIn(string[] launcher, (string Name, string? Value)[] environment, params string[] words) => Wait(Start(launcher, environment, words));

    /// <summary>Starts it. A search leaves out the proof of its first answer, which takes minutes and has tests of its own.</summary>
    public static Process Start(string[] launcher, (string Name, string? Value)[] environment, params string[] words)
    {
        string[] all = [.. launcher, Environment.ProcessPath is { } host && Path.GetFileNameWithoutExtension(host) == "dotnet" ? host : "dotnet", Program, .. words, .. words is ["search", ..] ? ["--no-proof"] : Array.Empty<string>()];
        var start = new ProcessStartInfo(all[0], all[1..]) { RedirectStandardOutput = true, RedirectStandardError = true, RedirectStandardInput = true, WorkingDirectory = Repository.Root };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        var process = Process.Start(start)!;
        process.StandardInput.Close();
        return process;
    }

    /// <summary>Waits for it; four minutes are a hang, even where much else goes on.</summary>
    public static Ended Wait(Process process)
    {
        using (process)
        {
            var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
            if (!process.WaitForExit(TimeSpan.FromSeconds(240)))
            {
                process.Kill();
                Assert.Fail("It hangs: " + error.Result);
            }

            return new Ended(process.ExitCode, output.Result, error.Result);
        }
    }

    /// <summary>Sends a signal; false when the process has ended already.</summary>
    public static bool Signal(Process process, int signal) => Send(process.Id, signal) == 0;

    /// <summary>The launcher that gives a process the default answer to Ctrl+C and to a closed terminal, which one started in the background may not have.</summary>
    public static string[] Answering => ["/usr/bin/env", "--default-signal=INT,HUP"];

    [LibraryImport("libc", EntryPoint = "kill")]
    private static partial int Send(int process, int signal);
}
