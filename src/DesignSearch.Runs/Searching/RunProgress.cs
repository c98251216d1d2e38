namespace DesignSearch.Runs.Searching;

/// <summary>How far a search is, in the words of a person.</summary>
/// <param name="Done">Share of the evaluations done [0…1].</param>
/// <param name="Evaluations">Layouts simulated.</param>
/// <param name="Best">The best so far, in words.</param>
public sealed record RunProgress(double Done, long Evaluations, string Best);
