namespace DesignSearch.Search.Proof;

/// <summary>How far branch and bound came in proving the cheapest point that serves.</summary>
/// <param name="IsComplete">Whether nothing is left that could cost less than the best found.</param>
/// <param name="Bound">No point that serves costs less than this; the cost of the best where the proof is complete.</param>
/// <param name="Best">The cheapest point found, the one that was known before included; null where none was.</param>
/// <param name="Cost">What it costs; infinite without one.</param>
/// <param name="Simulations">Simulations of sets and of single points.</param>
/// <param name="Boxes">Sets that were looked at.</param>
/// <param name="IsStopped">Whether it was stopped from outside.</param>
public sealed record CheapestProof(bool IsComplete, double Bound, double[]? Best, double Cost, long Simulations, long Boxes, bool IsStopped)
{
    /// <summary>What is proved of each further question, in the order asked.</summary>
    public IReadOnlyList<AimProof> Aims { get; init; } = [];
}
