using System.CommandLine;
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
        Arguments.Add(run);
        SetAction(parsed => session.Guarded(parsed, "Reading the stored run", line =>
        {
            var folder = new RunFolder(parsed.GetValue(run)!);
            var stored = RunStore.Load(folder);
            RunFiles.WriteAll(stored, folder.Path);
            line.End();
            session.Out.WriteLine(stored.Judgement.Answer);
            session.Out.WriteLine($"Report: {folder.Report}");
            return ExitCode.Done;
        }));
    }
}
