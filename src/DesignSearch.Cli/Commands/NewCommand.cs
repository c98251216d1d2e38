using System.CommandLine;
using System.CommandLine.Completions;
using System.Text;
using DesignSearch.Cli.Terminal;
using DesignSearch.Files;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Runs.Checking;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Starting;

namespace DesignSearch.Cli.Commands;

/// <summary>new: asks for a case and writes its scenario, or copies an example.</summary>
internal sealed class NewCommand : Command
{
    private static readonly string[] Copied = ["scenario.toml", "stock.csv"];

    private readonly Session session;
    private readonly Argument<string> folder = new("FOLDER")
    {
        HelpName = "FOLDER",
        Description = "The run's folder, for instance runs/my-house. Where it holds a scenario, that is asked about again.",
    };

    private readonly Option<string?> from = new("--from") { HelpName = "EXAMPLE", Description = "Copy an example, or another run, instead of asking." };
    private readonly Option<bool> usual = new("--usual") { Description = "Ask nothing and take every usual answer." };

    public NewCommand(Session session) : base("new", "Asks for a case, question by question, and writes its scenario.toml with every line explained.")
    {
        this.session = session;
        from.CompletionSources.Add(_ => ExampleRuns.Names.Select(n => new CompletionItem(n)));
        Arguments.Add(folder);
        Options.Add(from);
        Options.Add(usual);
        Validators.Add(result =>
        {
            if (result.GetValue(from) is not null && result.GetValue(usual))
                result.AddError("--from and --usual contradict each other.");
        });
        SetAction((parsed, cancel) => Task.Run(() => session.Guarded(parsed, "", _ => Execute(parsed, cancel)), CancellationToken.None));
    }

    private int Execute(ParseResult parsed, CancellationToken cancel)
    {
        var run = new RunFolder(parsed.GetValue(folder)!);
        if (File.Exists(run.Path))
            throw new InputException(new InputFault(run.Path, 0, 0, "", "a name for a folder; here lies a file"));
        if (parsed.GetValue(from) is { } example)
            Copy(run, example);
        else
            Ask(run, parsed.GetValue(usual), cancel);
        return Tell(run);
    }

    private static void Copy(RunFolder run, string example)
    {
        var source = ExampleRuns.Names.Contains(example) ? ExampleRuns.Of(example) : new RunFolder(example);
        if (!File.Exists(source.Scenario))
        {
            var expected = "a run, or one of the examples " + string.Join(", ", ExampleRuns.Names) + NearWord.Hint(example, ExampleRuns.Names);
            throw new InputException(new InputFault("--from", 0, 0, example, expected));
        }

        OutputFile.RequireNew("FOLDER", run.Scenario);
        foreach (var name in Copied.Where(n => File.Exists(source.At(n))))
            OutputFile.WriteNew("FOLDER", run.At(name), File.ReadAllBytes(source.At(name)));
    }

    private void Ask(RunFolder run, bool takesUsual, CancellationToken cancel)
    {
        var begun = NewCase.Of(run);
        if (CatalogueFolders.Find(run.Path, "starter") is null && begun.IsNew)
            throw new InputException(new InputFault(run.Path, 0, 0, "", "a folder near the catalogue 'starter', which is neither here nor with the program"));
        using var reader = new StreamReader(session.In(), Encoding.UTF8);
        var asker = new Asker(reader, session.Out, session.IsTyped, Math.Min(session.Columns(), Wrapped.Widest), cancel);
        if (!takesUsual)
            Introduce(asker, begun, run);
        var number = 0;
        foreach (var question in NewCase.Questions.Where(begun.IsAsked))
        {
            number++;
            if (takesUsual)
            {
                begun.Answer(question, "");
                continue;
            }

            asker.Draw("");
            foreach (var drawn in question.Picture)
                asker.Draw("    " + drawn);
            asker.Say(FormattableString.Invariant($"{number}. {question.Text(begun)}"), 3);
            asker.Ask(begun.Usual(question), answer => begun.Answer(question, answer), () =>
            {
                asker.Say("  " + question.WhereFrom + (begun.IsNew ? $" Till then {begun.Usual(question)} is taken, and the line is marked." : " What stands there is left."), 2);
                begun.Guess(question);
            });
        }

        SafeFile.Write(run.Scenario, begun.Text);
    }

    private static void Introduce(Asker asker, NewCase begun, RunFolder run)
    {
        asker.Say(begun.IsNew
            ? $"A new case in {run.Path}. An empty line takes what stands in brackets, ? means that you do not know, Ctrl+C leaves without writing."
            : $"There is a case in {run.Path}. An empty line leaves what stands in brackets; what is not asked for stays as it is.");
    }

    // What was written is read at once: a person should hear now what check would say later.
    private int Tell(RunFolder run)
    {
        var check = RunCheck.Of(run);
        session.Out.WriteLine();
        var width = Math.Min(session.Columns(), Wrapped.Widest);
        CaseText.Write(session.Out, check, width);
        session.Out.WriteLine();
        foreach (var told in new[]
        {
            $"Written: {run.Scenario}, every line explained. Open it in a plain text editor to say more.",
            $"Next: designsearch check {run.Path}, then designsearch search {run.Path}{(run.IsFinished ? " --force" : "")}",
        }.SelectMany(t => Wrapped.Lines(t, width, 2)))
            session.Out.WriteLine(told);
        return ExitCode.Done;
    }
}
