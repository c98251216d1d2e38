using System.CommandLine;
using DesignSearch.Cli.Terminal;
using DesignSearch.Files;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Words;
using DesignSearch.Reporting.Tables;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Simulate;

namespace DesignSearch.Cli.Commands;

/// <summary>simulate: given layouts, no search.</summary>
internal sealed class SimulateCommand : Command
{
    public SimulateCommand(Session session) : base(
        "simulate",
        "Simulates given layouts in a run's scenario: of one every figure, winter by winter, and its checks; of many a table.")
    {
        var run = Session.RunArgument();
        var layout = new Option<string>("--layout")
        {
            Description = "The layout: TOML with the keys of [choices]; what it leaves out is not there.",
            HelpName = "FILE.toml",
        };
        var layouts = new Option<string>("--layouts")
        {
            Description = "Many layouts: a folder of layout files, a table with a column for each choice it speaks of, or - for such a "
                + "table on standard input. One row of figures each, or with --json one line.",
            HelpName = "FOLDER|FILE.csv|-",
        };
        var weather = new Option<string?>("--weather") { Description = "Judge on the winters of this weather file instead of the scenario's.", HelpName = "FILE" };
        var weathers = new Option<string[]>("--weathers")
        {
            Description = "With --layouts: judge on these weather files, one after another.",
            HelpName = "FILE",
            AllowMultipleArgumentsPerToken = true,
        };
        var hourly = new Option<string?>("--hourly") { Description = "Write every hour as a table.", HelpName = "FILE.csv" };
        Arguments.Add(run);
        foreach (var option in new Option[] { layout, layouts, weather, weathers, hourly, session.Json })
            Options.Add(option);
        Validators.Add(result =>
        {
            var many = result.GetValue(layouts) is not null;
            if (many == result.GetValue(layout) is not null)
                result.AddError("Name one layout with --layout, or many with --layouts.");
            if (many && (result.GetValue(weather) is not null || result.GetValue(hourly) is not null))
                result.AddError("--weather and --hourly are for one layout; many take --weathers.");
            if (!many && result.GetValue(weathers) is { Length: > 0 })
                result.AddError("--weathers is for many layouts, --layouts; one takes --weather.");
        });
        SetAction((parsed, stop) => Task.FromResult(session.Guarded(parsed, "Reading the scenario and making its winters", line =>
        {
            if (parsed.GetValue(layouts) is { } source)
            {
                var folder = new RunFolder(parsed.GetValue(run)!);
                Many(session, folder, source, parsed.GetValue(weathers) ?? [], parsed.GetValue(session.Json), line, stop);
                return ExitCode.Done;
            }

            var table = parsed.GetValue(hourly) is null ? null : new HourlyTable();
            var simulation = SimulateRun.Execute(new RunFolder(parsed.GetValue(run)!), parsed.GetValue(layout)!, parsed.GetValue(weather), table is null ? null : table.Add);
            if (table is not null)
                OutputFile.Write("--hourly", parsed.GetValue(hourly)!, table.ToFile(), simulation.Files);
            line.End();
            if (parsed.GetValue(session.Json))
                session.WriteJson(SimulationSummary.Of(simulation));
            else
                Tell(session.Out, simulation);
            return ExitCode.Done;
        })));
    }

    // A line goes out when its block is done, a table when all is: half a table says nothing of what is missing.
    private static void Many(
        Session session,
        RunFolder folder,
        string source,
        IReadOnlyList<string> weathers,
        bool asLines,
        ProgressLine line,
        CancellationToken stop)
    {
        var input = source == "-" ? All(session.In()) : [];
        var table = new SimulationTable();
        Action<SimulatedLayout> tell = asLines ? session.WriteJsonLine : table.Add;
        var threads = Environment.ProcessorCount;
        SimulateRun.Many(folder, (scenario, faults) => Read(source, input, scenario, faults), weathers, threads, tell, stop);
        line.End();
        if (!asLines)
            session.Out.Write(table.ToString());
    }

    private static IReadOnlyList<NamedLayout> Read(string source, byte[] input, Scenario scenario, FaultList faults) => source == "-"
        ? LayoutListReader.Table("standard input", input, scenario, faults)
        : Directory.Exists(source)
            ? LayoutListReader.Folder(source, scenario, faults)
            : LayoutListReader.TableFile(source, scenario, faults);

    private static byte[] All(Stream input)
    {
        // One byte more than a table may have, so that what is too long is known to be.
        var all = new byte[CsvTable.MostBytes + 1];
        using (input)
            return all[..input.ReadAtLeast(all, all.Length, throwOnEndOfStream: false)];
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
