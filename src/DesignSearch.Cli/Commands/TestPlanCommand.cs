using System.CommandLine;
using System.Text;
using DesignSearch.Fitting.Plan;
using DesignSearch.Fitting.Words;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Reporting.Fits;
using DesignSearch.Runs.Folder;

namespace DesignSearch.Cli.Commands;

/// <summary>test-plan: a page that says how this house tells its own loss in three nights.</summary>
internal sealed class TestPlanCommand : Command
{
    private const string PageName = "test-plan.html";

    public TestPlanCommand(Session session) : base(
        "test-plan", "Writes a page to print: how three nights with a fan heater, a plug-in meter and two loggers tell what this house loses.")
    {
        var run = Session.RunArgument();
        Arguments.Add(run);
        SetAction(parsed => session.Guarded(parsed, "Reading the scenario and making its winters", line =>
        {
            var folder = new RunFolder(parsed.GetValue(run)!);
            folder.RequireThere();
            var scenario = ScenarioReader.Read(folder.Path);
            var plan = TestPlan.Of(scenario);
            var path = folder.At(PageName);
            OutputFile.Write(PageName, path, Encoding.UTF8.GetBytes(PlanPage.Of(plan, Session.Version)), scenario.Files.Select(f => f.Path));
            line.End();
            session.Say(PlanPage.Title(plan) + ".");
            foreach (var sentence in PlanWords.Borrow(plan).Concat(PlanWords.NotThese(plan)))
                session.Say("- " + sentence);
            session.Say($"The whole plan, to print: {path}");
            return ExitCode.Done;
        }));
    }
}
