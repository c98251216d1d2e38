using DesignSearch.Layouts.Decide.Judging;

namespace DesignSearch.Cli;

/// <summary>One layout of a summary.</summary>
public sealed record SummaryLayout(
    int Rank,
    string Title,
    string Turning,
    bool Holds,
    decimal BuildPrice,
    decimal LifeCost,
    double Score,
    double FrostHours,
    int WorstFrostHours,
    double FrostDegreeHoursKh,
    double LowestAirC,
    double StandbyKwh,
    IReadOnlyDictionary<string, string> Choices)
{
    /// <summary>Takes the figures of a judged layout.</summary>
    public static SummaryLayout Of(JudgedLayout l) => new(
        l.Rank, l.Title, l.Turning, l.Holds, l.BuildPrice, l.LifeCost, l.Score, l.FrostHours, l.WorstFrostHours,
        l.FrostDegreeHoursKh, l.LowestAirC, l.StandbyKwh, l.Choices);
}
