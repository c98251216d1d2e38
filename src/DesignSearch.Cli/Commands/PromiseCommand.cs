using System.CommandLine;
using System.Globalization;
using DesignSearch.Fitting.Logs;
using DesignSearch.Fitting.Promise;
using DesignSearch.Layouts.Words;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Cli.Commands;

/// <summary>promise: night by night what a layout promised for that air outside, and what came.</summary>
internal sealed class PromiseCommand : Command
{
    public PromiseCommand(Session session) : base(
        "promise",
        "After building: each night of a log, what the layout promised for that very air outside and what came, the first night from "
            + "which something was otherwise, and which system is short where the log has its heat.")
    {
        var run = Session.RunArgument();
        var layout = new Argument<string>("LAYOUT") { HelpName = "LAYOUT.toml", Description = "What was built: TOML with the keys of [choices]." };
        var logs = FitCommand.LogArgument();
        var watts = FitCommand.WattsOption();
        Arguments.Add(run);
        Arguments.Add(layout);
        Arguments.Add(logs);
        foreach (var option in new Option[] { watts, session.Json })
            Options.Add(option);
        SetAction(parsed => session.Guarded(parsed, "Reading the log", line =>
        {
            var folder = new RunFolder(parsed.GetValue(run)!);
            folder.RequireThere();
            var (scenario, built) = FitCommand.Read(folder, parsed.GetValue(layout));
            var log = LogReader.Read(parsed.GetValue(logs)!, scenario.Place, new(parsed.GetValue(watts)));
            var promised = Promised.Of(scenario, built, log);
            line.End();
            if (parsed.GetValue(session.Json))
                session.WriteJson(promised);
            else
                Tell(session, promised);
            return ExitCode.Done;
        }));
    }

    private static void Tell(Session session, Promised promised)
    {
        foreach (var remark in promised.Remarks)
            session.Say("! " + remark);
        session.Out.WriteLine($"{"evening",-14}{"outside",9}{"promised",10}{"between",16}{"came",8}   lowest hour, °C");
        foreach (var night in promised.Nights)
        {
            var day = night.Evening.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
            var between = Written.Sentence($"{night.LeastC:0.0} and {night.MostC:0.0}");
            var came = Tenth(night.CameC);
            session.Out.WriteLine($"{day,-14}{Tenth(night.OutsideC),9}{Tenth(night.PromisedC),10}{between,16}{came,8}{(night.IsKept ? "" : "   short")}");
        }

        session.Out.WriteLine();
        session.Say(PromiseText.Kept(promised));
        session.Say(PromiseText.Changed(promised));
        foreach (var system in promised.Systems)
            session.Say(PromiseText.System(system));
        if (promised.Wanting is { } wanting)
            session.Say(PromiseText.Wanting(wanting));
    }

    private static string Tenth(double value) => Written.Number(value, 1);
}
