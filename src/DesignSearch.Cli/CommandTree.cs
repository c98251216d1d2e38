using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using DesignSearch.Cli.Commands;
using DesignSearch.Cli.Terminal;

namespace DesignSearch.Cli;

/// <summary>The commands and their help.</summary>
public static class CommandTree
{
    private const string ExitCodes = """
        How it ends:
          0    done
          2    usage or input at fault; every fault is named with file, line and column;
               also when weather that was asked for does not come
          3    the search ended and nothing holds the frost limit
          4    a file cannot be written
          70   a fault of the program itself; what a search found before it is kept
          130  stopped by Ctrl+C, 143 by a request to end, 129 by a closed terminal; the partial result is kept

        """;

    private static readonly (string Command, string Example)[] Examples =
    [
        ("new", "new runs/my-house"),
        ("new", "new runs/my-house --from murk-sound"),
        ("search", "search runs/frost-hollow"),
        ("search", "search runs/frost-hollow --seed 7 --evaluations 2000 --force"),
        ("search", "search runs/frost-hollow --resume"),
        ("check", "check runs/frost-hollow"),
        ("simulate", "simulate runs/frost-hollow --layout my-layout.toml --hourly hours.csv"),
        ("simulate", "simulate runs/frost-hollow --layouts runs/frost-hollow/lists"),
        ("weather", "weather my-place.csv --picture winter.png"),
        ("weather", "weather my-logger.csv --for runs/frost-hollow"),
        ("weather", "weather --at 46.3,13.9 --save my-place.csv"),
        ("weather", "weather --at 46.3,13.9 --years 2005-2023 --save my-years.csv"),
        ("weather", "weather --near \"Redmond, Oregon\" --height 940"),
        ("parts", "parts tank"),
        ("report", "report runs/frost-hollow"),
        ("compare", "compare runs/frost-hollow"),
        ("test-plan", "test-plan runs/frost-hollow"),
        ("fit", "fit runs/frost-hollow three-nights.csv"),
        ("fit", "fit runs/frost-hollow inside.csv outside.csv meter.csv"),
        ("promise", "promise runs/frost-hollow my-layout.toml winter.csv"),
        ("gather", "gather runs > answers.csv"),
        ("completions", "completions bash"),
    ];

    /// <summary>Builds the commands.</summary>
    public static RootCommand Build(Session session)
    {
        var root = new RootCommand(
            "Finds which home-built heat holds a small greenhouse above its frost limit for the least money. A planning aid: local "
                + "codes and licensed work apply.")
        {
            new NewCommand(session),
            new SearchCommand(session),
            new CheckCommand(session),
            new SimulateCommand(session),
            new WeatherCommand(session),
            new PartsCommand(session),
            new ReportCommand(session),
            new CompareCommand(session),
            new TestPlanCommand(session),
            new FitCommand(session),
            new PromiseCommand(session),
            new GatherCommand(session),
            new CompletionsCommand(session),
        };
        root.Options.Add(session.Quiet);
        root.Options.Add(session.Verbose);
        foreach (var command in root.Subcommands)
        {
            command.Validators.Add(result =>
            {
                if (result.GetValue(session.Quiet) && result.GetValue(session.Verbose))
                    result.AddError("--quiet and --verbose contradict each other.");
            });
        }

        foreach (var help in root.Options.OfType<HelpOption>())
        {
            var plain = (HelpAction)help.Action!;
            plain.MaxWidth = Math.Min(plain.MaxWidth, Wrapped.Widest);
            help.Action = new HelpWithExamples(plain);
        }

        return root;
    }

    private sealed class HelpWithExamples(HelpAction inner) : SynchronousCommandLineAction
    {
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            var output = parseResult.InvocationConfiguration.Output;
            var name = parseResult.CommandResult.Command.Name;
            output.WriteLine("Examples:");
            foreach (var (_, example) in Examples.Where(e => e.Command == name || parseResult.CommandResult.Command is RootCommand))
                output.WriteLine("  designsearch " + example);
            output.WriteLine();
            var code = inner.Invoke(parseResult);
            output.WriteLine(ExitCodes);
            return code;
        }
    }
}
