using System.CommandLine;
using System.CommandLine.Invocation;
using System.Text;
using DesignSearch.Cli.Download;
using DesignSearch.Cli.Terminal;

namespace DesignSearch.Cli.Tests;

/// <summary>Runs a command as the program does, within the test.</summary>
internal static class Cli
{
    /// <summary>Runs it.</summary>
    /// <param name="words">The command line.</param>
    public static (int Code, string Output, string Error) Run(params string[] words) => RunOn("", words);

    /// <summary>Runs it with something on standard input.</summary>
    /// <param name="input">What stands there.</param>
    /// <param name="words">The command line.</param>
    public static (int Code, string Output, string Error) RunOn(string input, params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var session = new Session(output, error, live: false) { In = () => new MemoryStream(Encoding.UTF8.GetBytes(input)) };
        return Run(session, output, error, words);
    }

    /// <summary>Runs it with a person at the keyboard, who can be asked again.</summary>
    /// <param name="typed">What the person types.</param>
    /// <param name="words">The command line.</param>
    public static (int Code, string Output, string Error) RunTyped(string typed, params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        return Run(new Session(output, error, live: false) { In = () => new MemoryStream(Encoding.UTF8.GetBytes(typed)), IsTyped = true }, output, error, words);
    }

    /// <summary>Runs it with a service of the test's own in the place of the public one.</summary>
    /// <param name="service">Makes it when weather is asked for.</param>
    /// <param name="words">The command line.</param>
    public static (int Code, string Output, string Error) RunAsking(Func<PvgisService> service, params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        return Run(new Session(output, error, live: false) { Pvgis = service }, output, error, words);
    }

    private static (int Code, string Output, string Error) Run(Session session, StringWriter output, StringWriter error, string[] words)
    {
        var parsed = CommandTree.Build(session).Parse(words);
        if (parsed.Action is ParseErrorAction || (parsed.Errors.Count > 0 && parsed.Action is not SynchronousCommandLineAction { ClearsParseErrors: true }))
            return (Usage.Explain(parsed, error), output.ToString(), error.ToString());
        var code = parsed.Invoke(new InvocationConfiguration { Output = output, Error = error });
        return (code, output.ToString(), error.ToString());
    }
}
