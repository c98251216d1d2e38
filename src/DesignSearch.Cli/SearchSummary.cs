using DesignSearch.Layouts.Decide.Certify;
using DesignSearch.Runs.Store;

namespace DesignSearch.Cli;

/// <summary>What <c>search --json</c> prints.</summary>
/// <param name="Seed">Seed.</param>
/// <param name="Evaluations">Layouts simulated.</param>
/// <param name="StoppedBecause">One word.</param>
/// <param name="IsExact">True when every layout was simulated.</param>
/// <param name="Seconds">Time it took.</param>
/// <param name="Answer">The answer in one sentence.</param>
/// <param name="Currency">Currency word.</param>
/// <param name="Front">The front, the cheapest first.</param>
/// <param name="Picks">The picks, each as on the front or null.</param>
public sealed record SearchSummary(
    ulong Seed,
    long Evaluations,
    string StoppedBecause,
    bool IsExact,
    double Seconds,
    string Answer,
    string Currency,
    IReadOnlyList<SummaryLayout> Front,
    SummaryPicks Picks)
{
    /// <summary>What is proved of the first answer; null where no proof was wanted.</summary>
    public Certificate? Certificate { get; init; }

    /// <summary>Summarises a run.</summary>
    public static SearchSummary Of(StoredRun run)
    {
        var judgement = run.Judgement;
        SummaryLayout? Pick(int? rank) => rank is { } r ? SummaryLayout.Of(judgement.Ranking[r - 1]) : null;
        return new(
            run.Search.Seed,
            run.Search.Evaluations,
            run.Search.StoppedBecause,
            run.Search.IsExact,
            run.Search.Seconds,
            judgement.Answer,
            run.Scenario.Currency,
            [.. judgement.Front.Select(r => SummaryLayout.Of(r == 0 ? judgement.BareHouse : judgement.Ranking[r - 1]))],
            new SummaryPicks(
                Pick(judgement.Picks.First), Pick(judgement.Picks.CheapestThatHolds), Pick(judgement.Picks.BestValue), Pick(judgement.Picks.MostProtection)))
        {
            Certificate = run.Certificate,
        };
    }
}
