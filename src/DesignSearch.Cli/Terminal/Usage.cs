using System.CommandLine;
using System.CommandLine.Parsing;
using DesignSearch.Files;

namespace DesignSearch.Cli.Terminal;

/// <summary>Says what is wrong with a command line.</summary>
public static class Usage
{
    /// <summary>Prints each error on a line, the nearest known word for each unknown one, and where help is.</summary>
    /// <returns>The exit code for bad usage.</returns>
    public static int Explain(ParseResult parsed, TextWriter error)
    {
        foreach (var problem in parsed.Errors.Select(e => string.Join(' ', e.Message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))).Distinct())
            error.WriteLine(problem);
        var known = parsed.CommandResult.Command.Children.Where(c => !c.Hidden).Select(c => c.Name)
            .Concat(parsed.RootCommandResult.Command.Options.Where(o => o.Recursive).Select(o => o.Name)).ToList();
        foreach (var word in parsed.UnmatchedTokens.Where(t => t.Length > 2))
        {
            if (NearWord.Of(word, known) is { } near)
                error.WriteLine($"Did you mean '{near}' instead of '{word}'?");
        }

        var path = string.Join(' ', Names(parsed.CommandResult));
        error.WriteLine($"Try '{path} --help'.");
        return ExitCode.BadInput;
    }

    private static List<string> Names(CommandResult result)
    {
        var names = new List<string>();
        for (SymbolResult? r = result; r is CommandResult c; r = r.Parent)
            names.Insert(0, c.Command is RootCommand ? "designsearch" : c.Command.Name);
        return names;
    }
}
