using System.CommandLine;
using DesignSearch.Cli.Terminal;
using DesignSearch.Reporting;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Store;

namespace DesignSearch.Cli.Commands;

/// <summary>report: rebuilds chart, lists and page from the stored run.</summary>
internal sealed class ReportCommand : Command
{
    public ReportCommand(Session session) : base("report", "Rebuilds chart, lists and page of a finished run from its run.json; searches nothing.")
    {
        var run = Session.RunArgument();
        var spreadsheet = SpreadsheetOption.Make();
        Arguments.Add(run);
        Options.Add(spreadsheet);
        SetAction(parsed => session.Guarded(parsed, "Reading the stored run", line =>
        {
            var folder = new RunFolder(parsed.GetValue(run)!);
            using var held = FolderHold.Of(folder);
            var stored = RunStore.Load(folder);
            RunOutputs.Of(folder).RefuseForeign();
            if (SpreadsheetOption.Of(parsed, spreadsheet) is { } separator)
                stored = stored with { Scenario = stored.Scenario with { Separator = separator } };
            var unmade = RunFiles.WriteAll(stored, folder.Path);
            line.End();
            session.Tell(RunAge.Of(folder, stored), ExitCode.Done);
            session.Say(stored.Judgement.Answer);
            session.Out.WriteLine($"Report: {folder.Report}");
            // All that goes in is the stored run.
            return session.Tell(unmade, unmade.Count == 0 ? ExitCode.Done : ExitCode.BadInput);
        }));
    }
}
