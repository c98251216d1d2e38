using System.CommandLine;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Store;

namespace DesignSearch.Cli.Commands;

/// <summary>compare: ways to protect the house against each other at equal protection, from the stored run.</summary>
internal sealed class CompareCommand : Command
{
    private const int NameWidth = 24;

    public CompareCommand(Session session) : base(
        "compare",
        "Compares the ways of a finished run at equal protection: turning against more fixed collector, and with against without "
            + "each cheap measure.")
    {
        var run = Session.RunArgument();
        Arguments.Add(run);
        Options.Add(session.Json);
        SetAction(parsed => session.Guarded(parsed, "Reading the stored run", line =>
        {
            var folder = new RunFolder(parsed.GetValue(run)!);
            var stored = RunStore.Load(folder);
            line.End();
            session.Tell(RunAge.Of(folder, stored), ExitCode.Done);
            if (parsed.GetValue(session.Json))
                session.WriteJson(new { stored.Weighing.Turning, stored.Weighing.Comparisons });
            else
                Tell(session.Out, stored);
            return ExitCode.Done;
        }));
    }

    private static void Tell(TextWriter output, StoredRun run)
    {
        output.WriteLine("Turning or a bigger fixed collector? " + run.Weighing.Turning.Sentence);
        output.WriteLine();
        output.WriteLine(Row("", "holds", "build", "life cost", "frost h", "el. heat", "collector"));
        output.WriteLine(Row("", "", run.Scenario.Currency, run.Scenario.Currency, "worst", "kWh", "m²"));
        foreach (var comparison in run.Weighing.Comparisons)
        {
            output.WriteLine(comparison.Question);
            foreach (var way in comparison.Ways)
                output.WriteLine(Line(way));
            output.WriteLine("  " + comparison.Answer);
        }
    }

    private static string Line(Way way) => way.Best is { } b
        ? Row(
            "  " + way.Name, b.Holds ? "yes" : "no",
            FormattableString.Invariant($"{b.BuildPrice:0}"),
            FormattableString.Invariant($"{b.LifeCost:0}"),
            FormattableString.Invariant($"{b.WorstFrostHours}"),
            FormattableString.Invariant($"{b.StandbyKwh:0}"),
            FormattableString.Invariant($"{b.CollectorAreaM2:0.0}"))
        : ("  " + way.Name).PadRight(NameWidth) + " none: " + way.WhyNone;

    private static string Row(string name, params string[] cells) => name.PadRight(NameWidth) + string.Concat(cells.Select(c => c.PadLeft(11)));
}
