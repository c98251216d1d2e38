using System.CommandLine;
using DesignSearch.Cli.Terminal;
using DesignSearch.Files;
using DesignSearch.Reporting.Tables;
using DesignSearch.Runs.Store;

namespace DesignSearch.Cli.Commands;

/// <summary>gather: the first picks of many runs as one table, for searches on many machines or of many places.</summary>
internal sealed class GatherCommand : Command
{
    public GatherCommand(Session session) : base("gather", "Gathers the answers of all runs below a folder into one table (CSV); searches nothing.")
    {
        var folder = new Argument<string>("FOLDER") { HelpName = "FOLDER", Description = "A folder of run folders." };
        var spreadsheet = SpreadsheetOption.Make();
        Arguments.Add(folder);
        Options.Add(spreadsheet);
        SetAction(parsed => session.Guarded(parsed, "Reading the stored runs", line =>
        {
            var runs = RunGatherer.Of(parsed.GetValue(folder)!);
            line.End();
            var table = GatherTable.Of(runs);
            session.Out.Write(SpreadsheetOption.Of(parsed, spreadsheet) == CellSeparator.Semicolon ? SpreadsheetTable.Semicolons(table) : table);
            return ExitCode.Done;
        }));
    }
}
