namespace DesignSearch.Runs.Searching;

/// <summary>How far a search is, in the words of a person.</summary>
/// <param name="Done">Share of the whole run that is done [0…1], weighing and writing included.</param>
/// <param name="Evaluations">Layouts simulated.</param>
/// <param name="Best">The best so far, in words.</param>
public sealed record RunProgress(double Done, long Evaluations, string Best)
{
    /// <summary>The same in so few words that a narrow terminal holds them.</summary>
    public string Brief { get; init; } = Best;
}
