using System.Globalization;
using DesignSearch.Files;
using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Problem;
using DesignSearch.Layouts.Decide.Certify;
using DesignSearch.Layouts.Decide.Judging;
using DesignSearch.Layouts.Decide.Sure;
using DesignSearch.Layouts.Decide.Weigh;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Scenarios;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Runs.Folder;
using DesignSearch.Runs.Journal;
using DesignSearch.Runs.Store;
using DesignSearch.Search;
using DesignSearch.Search.Engine;
using DesignSearch.Search.Proof;
using DesignSearch.Search.Space;

namespace DesignSearch.Runs.Searching;

/// <summary>Carries one scenario through a search and stores what it came to.</summary>
public static class SearchRun
{
    private const int BlockSize = 16;
    private const int KeptOfEachMount = 3;
    private const int MostRounds = 3;
    private const long EnumerateUpTo = 20_000;

    /// <summary>Searches, judges and stores: journal, run.json and the layout files of the ranking.</summary>
    /// <param name="request">What to do.</param>
    /// <param name="elapsed">Time since the search began.</param>
    /// <param name="progress">Told how far the search is; null for silence.</param>
    /// <param name="cancel">Stops the search; the best so far is judged and stored.</param>
    /// <param name="finish">Makes what people read of it, while the folder is still held; null for nothing.</param>
    /// <exception cref="InputException">The scenario is at fault, or the folder holds results that may not be overwritten.</exception>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static StoredRun Execute(SearchRequest request, Func<TimeSpan> elapsed, IProgress<RunProgress>? progress, CancellationToken cancel, Action<StoredRun>? finish = null)
    {
        var folder = request.Folder;
        Guard(request);
        var scenario = ScenarioReader.Read(folder.Path);
        scenario = scenario with { Separator = request.Separator ?? scenario.Separator };
        var inputs = FileHash.Of(scenario.Files);
        var assessor = new LayoutAssessor(scenario, WinterSet.Make(scenario));
        var problem = new LayoutProblem(assessor);
        var seed = request.Seed ?? scenario.Search.Seed;
        var settings = new SearchSettings
        {
            Seed = seed,
            MaxEvaluations = request.Evaluations ?? scenario.Search.Evaluations,
            BlockSize = BlockSize,
            Threads = request.Threads,
            BestByMerit = scenario.Search.Ranked,
            EnumerateUpTo = EnumerateUpTo,
            TimeIsUp = request.Minutes is { } minutes ? () => elapsed().TotalMinutes >= minutes : null,
        };
        var engine = new SearchEngine(problem, settings);
        var head = new JournalHead(request.ProgramVersion, seed, BlockSize, inputs, engine.GoesThroughAll);
        using var journal = request.Resume && folder.HasJournal
            ? JournalFile.TakeUp(folder.Journal, head, JournalShape.Of(problem))
            : JournalFile.Begin(folder.Journal, head, request.Force || request.Resume, () => FolderHold.Begin(folder, request.Holder));
        var replay = journal.Evaluated.ToList();
        if (replay.Count > settings.MaxEvaluations)
            throw new InputException(new InputFault(
                folder.Journal, 0, 0, "",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"--evaluations of at least {replay.Count}, which are simulated already, not {settings.MaxEvaluations}; or start "
                        + $"afresh with --force")));
        FolderHold.Begin(folder, request.Holder);
        var log = new Log(journal);
        log.See(replay);
        var phases = new SearchPhases(progress, request.Proves);
        var result = Search(engine, new Teller(phases, scenario, log), log, replay, folder, cancel);
        var tried = journal.Evaluated;
        var others = BestOfEachMount(tried, problem.Space);
        var judge = new Judge(assessor);
        var run = new StoredRun
        {
            FormatVersion = StoredRun.CurrentFormat,
            ProgramVersion = request.ProgramVersion,
            Inputs = inputs,
            Search = new SearchRecord(
                seed, result.Evaluations, SpaceSize(problem), Word(result.StoppedBecause),
                result.StoppedInWords, result.IsExact,
                result.StoppedBecause == StopReason.Cancelled,
                Math.Round(elapsed().TotalSeconds, 1),
                CheapestOf(tried.Take(tried.Count / 2))),
            Scenario = ScenarioRecords.Of(scenario, assessor.Winters),
            Judgement = judge.Of(result, problem.Space, others),
            Weighing = Weighing.None,
            Unmade = ["What the result is worth was not weighed."],
        };
        // Whatever becomes of the weighing, what was found is not lost.
        RunStore.Save(run, folder);
        run = Weighed(
            run, new Weigher(assessor, request.Threads, seed, phases.Compare), tried, result, problem.Space, (found, sure) => judge.Of(result, problem.Space, others, found, sure),
            (judgement, ways) => Certify(request, result, judgement, ways, assessor, tried, phases, cancel), phases);
        phases.Write();
        run = run with { Search = run.Search with { Seconds = Math.Round(elapsed().TotalSeconds, 1) } };
        LayoutLists.Write(folder, run, scenario);
        RunStore.Save(run, folder);
        finish?.Invoke(run);
        FolderHold.End(folder);
        return run;
    }

    private static StoredRun Weighed(
        StoredRun run,
        Weigher weigher,
        IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried,
        SearchResult result,
        LayoutSpace space,
        Func<IReadOnlyList<Layout>, SureFound?, Judgement> judge,
        Func<Judgement, IReadOnlyList<(WayClass Way, decimal? Known)>, Certified?> certify,
        SearchPhases phases)
    {
        var (judgement, found) = (run.Judgement, new List<Layout>());
        try
        {
            // What the comparison of the ways betters is ranked first, or the answer would contradict it.
            phases.Compare(0);
            for (var round = 0; round < MostRounds && weigher.Better(judgement, tried, space, result.IsExact) is { Count: > 0 } better; round++)
            {
                found.AddRange(better);
                judgement = judge(found, null);
            }

            var certified = certify(judgement, weigher.Ways(tried, space));
            var certificate = certified?.Certificate;
            weigher.Take(certificate?.Ways ?? [], certified?.Met ?? []);
            if (certified?.Better is { } cheaper)
            {
                found.Add(cheaper);
                judgement = judge(found, null);
            }

            phases.BeSure();
            if (weigher.Sure(judgement, tried, space, result.IsExact) is { } sure)
                judgement = judge(found, sure);
            if (judgement.Picks is { First: { } first, CheapestThatHolds: { } least })
                certificate = certificate?.Beside(judgement.Ranking[least - 1], judgement.Ranking[first - 1], run.Scenario.Currency, result.IsExact);
            phases.Weigh();
            var weighing = weigher.Of(judgement, tried, space, result.IsExact);
            if (weighing.Miss is { } miss)
                judgement = judgement with { NearestMiss = [.. judgement.NearestMiss, .. miss.Sentences] };
            return run with { Judgement = judgement, Certificate = certificate, Weighing = weighing, Unmade = [] };
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // What was ranked until then stays; a proof without the layout that it found would contradict the ranking.
            return run with { Judgement = judgement, Unmade = [$"What the result is worth could not be weighed ({e.GetType().Name}: {e.Message.ReplaceLineEndings(" ")})."] };
        }
    }

    // A search that was stopped by hand or by its clock is not proved: that would go on for minutes.
    private static Certified? Certify(
        SearchRequest request,
        SearchResult result,
        Judgement judgement,
        IReadOnlyList<(WayClass Way, decimal? Known)> ways,
        LayoutAssessor assessor,
        IReadOnlyList<(double[] Point, Evaluation Evaluation)> tried,
        SearchPhases phases,
        CancellationToken cancel)
    {
        if (!request.Proves || cancel.IsCancellationRequested || result.StoppedBecause == StopReason.Time)
            return null;
        var cheapest = judgement.BareHouse.Holds ? 0 : judgement.Picks.CheapestThatHolds is { } rank ? judgement.Ranking[rank - 1].LifeCost : (decimal?)null;
        if (result.IsExact)
            return new(Certifier.Exact(cheapest), null, []);
        var teller = new ProofTeller(phases, assessor.Scenario.Money.Currency);
        return new Certifier(assessor, request.Threads).Of(cheapest, ways, tried, teller, cancel);
    }

    // The head of the journal names what differs; this is for a journal that was written by something else.
    private static SearchResult Search(
        SearchEngine engine,
        Teller teller,
        Log log,
        IReadOnlyList<(double[] Point, Evaluation Evaluation)> replay,
        RunFolder folder,
        CancellationToken cancel)
    {
        try
        {
            return engine.Run(teller, log, replay, cancel);
        }
        catch (InvalidDataException)
        {
            throw new InputException(new InputFault(folder.Journal, 3, 0, "", "the layouts that this search comes to; start afresh with --force"));
        }
    }

    /// <summary>Distinct layouts there can be, sleeping choices counted once at most as many as their levels.</summary>
    public static double SpaceSize(LayoutProblem problem) => (double)(new SearchSpace(problem.Variables).Size ?? 0);

    private static decimal? CheapestOf(IEnumerable<(double[] Point, Evaluation Evaluation)> tried)
    {
        var costs = tried.Where(t => t.Evaluation.TotalViolation == 0 && t.Evaluation.Objectives[1] == 0).Select(t => t.Evaluation.Objectives[0]).ToList();
        return costs.Count == 0 ? null : Math.Round((decimal)costs.Min(), 2);
    }

    // The front may hold one way of turning only; the builder wants to see what the others cost. Everything simulated is in the journal.
    private static IReadOnlyList<EvaluatedPoint> BestOfEachMount(IReadOnlyList<(double[] Point, Evaluation Evaluation)> all, LayoutSpace space) =>
    [
        .. all.Select((p, i) => new EvaluatedPoint(p.Point, p.Evaluation, i))
            .Where(p => p.Evaluation.TotalViolation == 0)
            .GroupBy(p => space.At(p.Point) is { } layout && layout.Get(SolarChoices.Mount) is { } mount ? mount.Turning.ToString() : "")
            .Where(g => g.Key.Length > 0)
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .SelectMany(g => g.OrderByDescending(p => p.Evaluation.Merit).ThenBy(p => p.Index).Take(KeptOfEachMount)),
    ];

    private static void Guard(SearchRequest request)
    {
        var folder = request.Folder;
        folder.RequireThere();
        JournalFile.CheckOurs(folder.Journal);
        if (folder.IsBrokenOff && !request.Force && !request.Resume)
            throw new InputException(new InputFault(
                folder.Journal, 0, 0, "",
                "an unsearched folder; a search was broken off here. Use --resume to take it up or --force to begin anew without what it found"));
        if (folder.IsFinished && !request.Force && !request.Resume)
            throw new InputException(new InputFault(
                folder.RunFile, 0, 0, "",
                "an unsearched folder; this run is finished. Use --force to search it anew, which replaces its results"));
        RunOutputs.Of(folder).RefuseForeign();
    }

    private static string Word(StopReason reason) => reason switch
    {
        StopReason.Budget => "evaluations",
        StopReason.Time => "time",
        StopReason.Cancelled => "stopped",
        StopReason.Stagnation => "stagnation",
        StopReason.Target => "target",
        StopReason.Unfound => "unfound",
        _ => "exhausted",
    };

    private sealed class Log(JournalFile journal) : ISearchLog
    {
        /// <summary>Life cost of the cheapest layout so far that passes every check and has no frost; null before one is found.</summary>
        public double? CheapestThatHolds { get; private set; }

        public void Append(long firstIndex, ReadOnlySpan<double[]> points, ReadOnlySpan<Evaluation> evaluations)
        {
            var lines = new (double[] Point, Evaluation Evaluation)[points.Length];
            for (var i = 0; i < lines.Length; i++)
                lines[i] = (points[i], evaluations[i]);
            See(lines);
            journal.Append(lines);
        }

        /// <summary>Looks at evaluations, new ones or those of a journal that is taken up.</summary>
        public void See(IEnumerable<(double[] Point, Evaluation Evaluation)> lines)
        {
            foreach (var (_, evaluation) in lines)
            {
                if (evaluation.TotalViolation == 0 && evaluation.Objectives[1] == 0 && !(evaluation.Objectives[0] >= CheapestThatHolds))
                    CheapestThatHolds = evaluation.Objectives[0];
            }
        }
    }

    private sealed class ProofTeller(SearchPhases phases, string currency) : IProgress<CheapestProof>
    {
        public void Report(CheapestProof value) => phases.Prove(SearchWords.Proving(value.Bound, currency), SearchWords.ProvingBriefly(value.Bound, currency));
    }

    private sealed class Teller(SearchPhases phases, Scenario scenario, Log log) : IProgress<SearchProgress>
    {
        public void Report(SearchProgress value)
        {
            var (words, brief) = value.BestPerObjective.Count != 2 ? (SearchWords.NoneYet, SearchWords.NoneYet)
                : log.CheapestThatHolds is { } cost
                ? (SearchWords.Holds(cost, scenario.Money.Currency, value.FrontSize), SearchWords.HoldsBriefly(cost, scenario.Money.Currency))
                : (SearchWords.Nearest(value.BestPerObjective[1], value.FrontSize), SearchWords.NearestBriefly(value.BestPerObjective[1]));
            phases.Search(value.Fraction, value.Evaluations, words, brief);
        }
    }
}
