using System.CommandLine;
using DesignSearch.Layouts.Words;
using DesignSearch.Reporting.Tables;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Simulate;

namespace DesignSearch.Cli.Commands;

/// <summary>simulate: one given layout, no search.</summary>
internal sealed class SimulateCommand : Command
{
    public SimulateCommand(Session session) : base("simulate", "Simulates one given layout in a run's scenario: every figure, winter by winter, and its checks.")
    {
        var run = Session.RunArgument();
        var layout = new Option<string>("--layout")
        {
            Description = "The layout: TOML with the keys of [choices]; what it leaves out is not there.",
            HelpName = "FILE.toml",
            Required = true,
        };
        var weather = new Option<string?>("--weather") { Description = "Judge on the winters of this weather file instead of the scenario's.", HelpName = "FILE" };
        var hourly = new Option<string?>("--hourly") { Description = "Write every hour as a table.", HelpName = "FILE.csv" };
        Arguments.Add(run);
        foreach (var option in new Option[] { layout, weather, hourly, session.Json })
            Options.Add(option);
        SetAction(parsed => session.Guarded(parsed, "Reading the scenario and making its winters", line =>
        {
            var table = parsed.GetValue(hourly) is null ? null : new HourlyTable();
            var simulation = SimulateRun.Execute(new RunFolder(parsed.GetValue(run)!), parsed.GetValue(layout)!, parsed.GetValue(weather), table is null ? null : table.Add);
            table?.Save(parsed.GetValue(hourly)!);
            line.End();
            if (parsed.GetValue(session.Json))
                session.WriteJson(SimulationSummary.Of(simulation));
            else
                Tell(session.Out, simulation);
            return ExitCode.Done;
        }));
    }

    private static void Tell(TextWriter output, Simulation simulation)
    {
        var (layout, currency) = (simulation.Layout, simulation.Currency);
        output.WriteLine($"{simulation.Scenario}: {layout.Title}");
        output.WriteLine(Written.Sentence(
            $"Build price {layout.BuildPrice:0.00} {currency}, life cost {layout.LifeCost:0.00} {currency},",
            $"{Written.Count((long)Math.Round(layout.LabourHours, MidpointRounding.AwayFromZero), "hour")} of work"));
        output.WriteLine(layout.Holds
            ? Written.Sentence($"It holds {simulation.FrostLimitC:0.#} °C in every winter.")
            : Written.Sentence(
                $"It does not hold: {Written.Count(layout.WorstFrostHours, "frost hour")}",
                $"in the worst winter{(layout.PassesChecks ? "" : ", and a check fails")}."));
        foreach (var (winter, weight, outcome, driveKwh, moves) in layout.Winters)
        {
            output.WriteLine();
            output.WriteLine(Written.Sentence(
                $"{winter} winter (weight {weight:0.##}), {Written.Count(outcome.SeasonHours, "hour")}"));
            output.WriteLine(Written.Sentence($"  frost hours            {outcome.FrostHours,10}"));
            output.WriteLine(Written.Sentence($"  frost degree-hours     {outcome.FrostDegreeHoursKh,10:0.0} K·h"));
            output.WriteLine(Written.Sentence(
                $"  lowest air             {outcome.LowestAirC,10:0.0} °C hour mean, {outcome.LowestWithinHourC:0.0} °C within",
                $"the hour{(layout.Plants is { } place ? ", " + place.Where : "")}"));
            if (layout.Plants is not null)
                output.WriteLine(Written.Sentence($"  lowest air in house    {outcome.LowestHouseAirC,10:0.0} °C hour mean"));
            output.WriteLine(Written.Sentence($"  electric heat          {outcome.StandbyKwh,10:0} kWh"));
            output.WriteLine(Written.Sentence($"  pumps, fans and drive  {outcome.PumpKwh + driveKwh,10:0} kWh"));
            if (layout.CollectorAreaM2 > 0)
            {
                output.WriteLine(Written.Sentence($"  collector yield        {outcome.CollectorYieldKwh,10:0} kWh into the tank"));
                output.WriteLine(Written.Sentence(
                    $"  pump hours             {outcome.PumpHours,10:0} h; {Written.Count(moves, "move")} of the mount"));
                output.WriteLine(Written.Sentence(
                    $"  tank                   {outcome.TankMeanC,10:0.0} °C mean, {outcome.TankLowestC:0.0} to",
                    $"{outcome.TankHighestC:0.0} °C"));
            }

            output.WriteLine(Written.Sentence($"  balance residual       {outcome.BalanceResidual,10:0.0E+0} of throughput"));
        }

        output.WriteLine();
        foreach (var check in layout.Checks)
            output.WriteLine($"{(check.Passed ? "ok  " : "FAIL")} {check.Title}: {check.Sentence}");
    }
}
