using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using DesignSearch.Cli.Terminal;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Words;
using DesignSearch.Reporting;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Searching;
using DesignSearch.Runs.Store;

namespace DesignSearch.Cli.Commands;

/// <summary>search: finds the layouts, writes the results beside the scenario.</summary>
internal sealed class SearchCommand : Command
{
    private readonly Option<long?> seed = NumberOption.Whole("--seed", "Same seed, same answer. Without it, the scenario's.", "N", 0, 1_000_000_000_000_000);
    private readonly Option<long?> evaluations = NumberOption.Whole("--evaluations", "Layouts to simulate at most. Without it, the scenario's.", "N", 1, 1_000_000_000);
    private readonly Option<double?> minutes = NumberOption.Real("--minutes", "Stop after this many minutes.", "M", 0.01, 100_000);
    private readonly Option<long?> threads = NumberOption.Whole("--threads", "Threads to work on; the answer does not depend on it.", "N", 1, 256);
    private readonly Option<bool> resume = new("--resume") { Description = "Take up a search that was broken off." };
    private readonly Option<bool> force = new("--force") { Description = "Begin anew over finished results or a broken-off search." };

    private readonly Option<string?> spreadsheet = SpreadsheetOption.Make();

    private readonly Option<bool> noProof = new("--no-proof") { Description = "Leave out the proof that nothing cheaper holds, which takes minutes." };

    public SearchCommand(Session session) : base("search", "Searches the layouts of a run and writes chart, ranking, shopping lists and report beside its scenario.")
    {
        var run = Session.RunArgument();
        Arguments.Add(run);
        foreach (var option in new Option[] { seed, evaluations, minutes, threads, resume, force, noProof, spreadsheet, session.Json })
            Options.Add(option);
        SetAction((parsed, cancel) => Task.Run(() => Execute(session, parsed, new RunFolder(parsed.GetValue(run)!), cancel), CancellationToken.None));
    }

    private int Execute(Session session, ParseResult parsed, RunFolder folder, CancellationToken cancel) =>
        session.Guarded(parsed, "Reading the scenario and making its winters", line =>
    {
        var request = new SearchRequest(
            folder,
            (ulong?)parsed.GetValue(seed),
            parsed.GetValue(evaluations),
            parsed.GetValue(minutes),
            (int)(parsed.GetValue(threads) ?? Environment.ProcessorCount),
            parsed.GetValue(resume),
            parsed.GetValue(force),
            Session.Version,
            string.Create(CultureInfo.InvariantCulture, $"process {Environment.ProcessId} on {Environment.MachineName}, begun {DateTime.Now:yyyy-MM-dd HH:mm:ss}"))
        {
            Proves = !parsed.GetValue(noProof),
            Separator = SpreadsheetOption.Of(parsed, spreadsheet),
        };
        var clock = Stopwatch.StartNew();
        IReadOnlyList<string> unmade = [];
        var run = SearchRun.Execute(request, () => clock.Elapsed, new Teller(line), cancel, found =>
        {
            if (parsed.GetValue(session.Verbose))
                line.End();
            Explain(session, parsed, found, request);
            unmade = RunFiles.WriteAll(found, folder.Path);
            line.End();
        });
        if (parsed.GetValue(session.Json))
            session.WriteJson(SearchSummary.Of(run));
        else
            Tell(session, run, folder);
        if (unmade.Count > 0)
            return session.Tell(unmade, ExitCode.Internal);
        if (run.Search.IsPartial || run.Certificate is { IsStopped: true })
            return session.StopCode;
        return run.Judgement.AnythingHolds ? ExitCode.Done : ExitCode.NothingHolds;
    });

    private static void Explain(Session session, ParseResult parsed, StoredRun run, SearchRequest request)
    {
        foreach (var input in run.Inputs)
            session.Note(parsed, $"Read {input.File}, SHA-256 {input.Sha256}.");
        foreach (var winter in run.Scenario.Winters)
            session.Note(parsed, Written.Sentence(
                $"Winter '{winter.Name}', weight {winter.Weight:0.##}: mean {winter.MeanC:0.0} °C, lowest {winter.LowestC:0.0} °C,",
                $"{Written.Count(winter.FrostHoursOutside, "hour")} below the limit outside."));
        session.Note(parsed, Written.Sentence(
            $"Seed {run.Search.Seed}, {Written.Count(request.Threads, "thread")},",
            $"{run.Search.SpaceSize:0.###E+0} distinct layouts at most,",
            $"{run.Search.Evaluations} simulated in {run.Search.Seconds:0.0} s: {run.Search.StoppedInWords}"));
        session.Note(parsed, $"Writing the results to {request.Folder.Path}.");
    }

    private static void Tell(Session session, StoredRun run, RunFolder folder)
    {
        var (judgement, currency) = (run.Judgement, run.Scenario.Currency);
        session.Say(judgement.Answer);
        foreach (var sentence in judgement.Sureness)
            session.Say(sentence);
        foreach (var doubt in run.Scenario.InDoubt)
            session.Say("In doubt: " + doubt);
        session.Say("");
        var picks = judgement.Picks;
        var beside = judgement.BareHouse.Holds ? "Beside the bare house, c" : "C";
        (string Name, int? Rank)[] named =
        [
            .. judgement.Sureness.Count > 0 ? new[] { ("First choice", picks.First) } : [],
            (beside + "heapest that holds", picks.CheapestThatHolds), (Value(judgement), picks.BestValue), ("Most protection", picks.MostProtection),
        ];
        foreach (var (name, rank) in named)
            session.Say($"{name + ":",-21}{(rank is { } r ? Line(judgement.Ranking[r - 1], currency) : "none within the budget")}");
        if (run.Certificate is { } certificate)
            session.Say(certificate.Sentence);
        foreach (var miss in judgement.NearestMiss)
            session.Say(miss);
        session.Say("");
        session.Say(Written.Sentence(
            $"{Written.Count(run.Search.Evaluations, "layout")} simulated in {run.Search.Seconds:0.0} s. {run.Search.StoppedInWords}"));
        session.Say($"Report: {folder.Report}");
    }

    // What does not hold though others do is no solution.
    private static string Value(Judgement judgement) =>
        judgement is { AnythingHolds: true, Picks.BestValue: { } rank } && !judgement.Ranking[rank - 1].Holds ? "First step, no more" : "Best value";

    private static string Line(JudgedLayout layout, string currency) => Written.Sentence(
        $"no. {layout.Rank}, {layout.Title}: build {layout.BuildPrice:0} {currency}, whole life {layout.LifeCost:0} {currency},",
        $"{Written.Count(layout.WorstFrostHours, "frost hour")} in the worst winter,{DegreeHours(layout)}",
        $"coldest hour {layout.LowestAirC:0.0} °C{(layout.Plants is { } place ? " " + place.Where : "")}");

    // What protection is measured by: of two that fail, the one with fewer hours may be the colder.
    private static string DegreeHours(JudgedLayout layout) =>
        layout.Holds ? "" : Written.Sentence($" {layout.FrostDegreeHoursKh:0} degree-hours of frost in an average one,");

    private sealed class Teller(ProgressLine line) : IProgress<RunProgress>
    {
        // A narrow terminal keeps what it costs and how long it takes.
        public void Report(RunProgress value)
        {
            var count = Written.Count(value.Evaluations, "layout");
            line.Show(value.Done, $"{count}, {value.Best}", $"{count}, {value.Brief}", value.Brief);
        }
    }
}
