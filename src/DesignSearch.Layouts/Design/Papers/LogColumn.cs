namespace DesignSearch.Layouts.Design.Papers;

/// <summary>One column of the log sheet.</summary>
/// <param name="What">What is written there.</param>
/// <param name="Unit">Its unit; empty for words.</param>
public sealed record LogColumn(string What, string Unit);
