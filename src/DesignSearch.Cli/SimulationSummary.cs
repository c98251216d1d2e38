using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Runs.Simulate;

namespace DesignSearch.Cli;

/// <summary>What <c>simulate --json</c> prints: the figures of the ranking at the top, each winter below.</summary>
public sealed record SimulationSummary(
    string Title,
    bool Holds,
    int SeasonHours,
    double FrostHours,
    int WorstFrostHours,
    double FrostDegreeHoursKh,
    double LowestAirC,
    double StandbyKwh,
    double CollectorYieldKwh,
    double PumpHours,
    double BalanceResidual,
    decimal BuildPrice,
    decimal LifeCost,
    double Score,
    double LossWPerK,
    string Currency,
    IReadOnlyDictionary<string, string> Choices,
    IReadOnlyList<WinterOutcome> Winters,
    IReadOnlyList<Check> Checks)
{
    /// <summary>Takes the figures of a simulation; the residual is the worst of the winters.</summary>
    public static SimulationSummary Of(Simulation s)
    {
        var l = s.Layout;
        return new(
            l.Title, l.Holds, l.Winters.Max(w => w.Outcome.SeasonHours), l.FrostHours, l.WorstFrostHours,
            l.FrostDegreeHoursKh, l.LowestAirC, l.StandbyKwh, l.CollectorYieldKwh, l.PumpHours,
            l.Winters.Max(w => Math.Abs(w.Outcome.BalanceResidual)), l.BuildPrice, l.LifeCost, l.Score, s.LossWPerK, s.Currency, l.Choices, l.Winters, l.Checks);
    }
}
