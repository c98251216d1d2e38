namespace DesignSearch.Layouts.Decide.Judging;

/// <summary>The layouts to look at first, each by its rank; null where there is none.</summary>
/// <param name="First">The one to build: lowest life cost among those that hold and are sure enough; where sureness was not asked for, the cheapest that holds.</param>
/// <param name="CheapestThatHolds">Lowest life cost among those that hold the winters they were chosen on.</param>
/// <param name="BestValue">Best score among those that pass every check.</param>
/// <param name="MostProtection">
/// The surest, and of equally sure ones the one with the warmest coldest hour; where sureness was not asked for or nothing holds, fewest frost
/// degree-hours among those that pass every check, then the highest lowest air, then the lower life cost.
/// </param>
public sealed record Picks(int? First, int? CheapestThatHolds, int? BestValue, int? MostProtection);
