using System.CommandLine;
using System.Text;
using DesignSearch.Cli.Terminal;
using DesignSearch.Files;
using DesignSearch.Fitting.Estimate;
using DesignSearch.Fitting.Logs;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Reporting.Fits;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Cli.Commands;

/// <summary>fit: what a log of the house says against its drawing.</summary>
internal sealed class FitCommand : Command
{
    private const string PageName = "fit.html";

    public FitCommand(Session session) : base(
        "fit",
        "Fits this house to its own log: tables of times with the air inside and outside and the heater. Writes fitted.toml beside the "
            + "scenario, which searches then use, and a page with pictures.")
    {
        var run = Session.RunArgument();
        var logs = LogArgument();
        var layout = new Option<string?>("--layout") { Description = "What stood in the house while it was logged; nothing unless named.", HelpName = "FILE.toml" };
        var watts = WattsOption();
        Arguments.Add(run);
        Arguments.Add(logs);
        foreach (var option in new Option[] { layout, watts, session.Json })
            Options.Add(option);
        SetAction(parsed => session.Guarded(parsed, "Reading the log", line =>
        {
            var folder = new RunFolder(parsed.GetValue(run)!);
            folder.RequireThere();
            var (scenario, stood) = Read(folder, parsed.GetValue(layout));
            var paths = parsed.GetValue(logs)!;
            var log = LogReader.Read(paths, scenario.Place, new(parsed.GetValue(watts)));
            line.Show(double.NaN, "Fitting …");
            var fit = HouseFitting.Run(scenario, stood, log);
            var inputs = scenario.Files.Select(f => f.Path).Concat(paths).ToList();
            OutputFile.Write(PageName, folder.At(PageName), Encoding.UTF8.GetBytes(FitPage.Of(scenario.Name, fit, Session.Version)), inputs);
            var path = folder.At(FittedReading.FileName);
            if (fit.Fit is { } found)
                OutputFile.Write(FittedReading.FileName, path, Encoding.UTF8.GetBytes(FittedReading.Text(found)), inputs.Where(i => i != path));
            line.End();
            if (parsed.GetValue(session.Json))
                session.WriteJson(fit);
            else
                Tell(session, fit, path, folder.At(PageName));
            return ExitCode.Done;
        }));
    }

    /// <summary>The argument LOG.</summary>
    public static Argument<string[]> LogArgument() => new("LOG")
    {
        HelpName = "LOG",
        Description = "Tables of times: one with everything, or one of each logger.",
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary>--heater-watts.</summary>
    public static Option<double?> WattsOption() =>
        NumberOption.Real("--heater-watts", "What the heater takes while it runs, for a log that says only on and off.", "WATTS", 10, 50_000);

    /// <summary>A run's scenario, and a layout of it; the bare house where none is named.</summary>
    /// <param name="folder">The run.</param>
    /// <param name="layout">The layout's file, or null.</param>
    public static (Scenario Scenario, Layout Layout) Read(RunFolder folder, string? layout)
    {
        var scenario = ScenarioReader.Read(folder.Path);
        if (layout is null)
            return (scenario, Layout.Bare(scenario.Systems.Choices));
        var faults = new FaultList();
        var read = LayoutFileReader.Read(layout, layout, scenario, faults);
        faults.ThrowIfAny();
        return (scenario, read);
    }

    private static void Tell(Session session, FitResult fit, string path, string page)
    {
        foreach (var sentence in fit.Before)
            session.Say(sentence);
        foreach (var sentence in fit.Warnings)
            session.Say("! " + sentence);
        session.Out.WriteLine();
        session.Say(FitPageWords.Answer(fit));
        foreach (var sentence in new[] { fit.Refusal, FitPageWords.HeldOut(fit) }.Concat(fit.Figures.Select(FitPageWords.Figure)).Append(fit.SunRefusal))
        {
            if (sentence.Length > 0)
                session.Say(sentence);
        }

        session.Out.WriteLine();
        session.Say(fit.IsLearnt ? FitPageWords.InForce(path) : "No fitted.toml was written; one that was there stays.");
        session.Say($"Pictures and every night: {page}");
    }
}
