namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>The three layouts to look at first, each by its rank; null where there is none.</summary>
/// <param name="CheapestThatHolds">Lowest life cost among those that hold.</param>
/// <param name="BestValue">Best score among those that pass every check.</param>
/// <param name="MostProtection">Fewest frost degree-hours among those that pass every check, then the highest lowest air, then the lower life cost.</param>
public sealed record Picks(int? CheapestThatHolds, int? BestValue, int? MostProtection);
