namespace DesignSearch.Layouts.Decide.Sure;

/// <summary>What was drawn because nobody knows it for sure.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Range">The ends of its range, in plain words.</param>
/// <param name="Why">Where the range comes from, a sentence.</param>
public sealed record DrawnDoubt(string Name, string Range, string Why);
