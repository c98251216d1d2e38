namespace DesignSearch.Search.Proof;

/// <summary>What is proved of one question.</summary>
/// <param name="Bound">None of its points that serves costs less; infinite where none serves, the cost of the best where that is proved.</param>
/// <param name="Best">The cheapest of its points that came to light; null where none cheaper than the known one did.</param>
/// <param name="Cost">What the cheapest known costs; infinite without one.</param>
public sealed record AimProof(double Bound, double[]? Best, double Cost)
{
    /// <summary>Whether nothing cheaper is left.</summary>
    public bool IsComplete => Bound >= Cost;
}
