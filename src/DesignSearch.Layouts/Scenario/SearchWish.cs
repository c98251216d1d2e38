namespace DesignSearch.Layouts;

/// <summary>How long to search.</summary>
/// <param name="Seed">Seed of every random number.</param>
/// <param name="Evaluations">Layouts to simulate at most.</param>
/// <param name="Ranked">How many layouts the ranking keeps.</param>
public sealed record SearchWish(ulong Seed, long Evaluations, int Ranked);
