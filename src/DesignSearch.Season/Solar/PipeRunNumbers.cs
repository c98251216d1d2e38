namespace DesignSearch.Season.Solar;

/// <summary>The pipe run between collector and tank; out is the warm pipe, back the cool one, both in the open air.</summary>
/// <param name="OutLossWPerK">Loss of the warm pipe, whole length [W/K].</param>
/// <param name="BackLossWPerK">Loss of the cool pipe, whole length [W/K].</param>
/// <param name="OutCapacityJPerK">Heat capacity of the warm pipe with its water [J/K].</param>
/// <param name="BackCapacityJPerK">Heat capacity of the cool pipe with its water [J/K].</param>
public sealed record PipeRunNumbers(double OutLossWPerK, double BackLossWPerK, double OutCapacityJPerK, double BackCapacityJPerK)
{
    /// <summary>Pipes of no length.</summary>
    public static PipeRunNumbers None { get; } = new(0, 0, 0, 0);
}
