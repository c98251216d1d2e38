namespace DesignSearch.Cli;

/// <summary>The picks of a summary.</summary>
/// <param name="First">The one to build: the cheapest that is sure enough.</param>
/// <param name="CheapestThatHolds">Lowest life cost among those that hold.</param>
/// <param name="BestValue">Most frost-free hours per unit of life cost.</param>
/// <param name="MostProtection">The surest, or the one with the fewest frost degree-hours.</param>
public sealed record SummaryPicks(SummaryLayout? First, SummaryLayout? CheapestThatHolds, SummaryLayout? BestValue, SummaryLayout? MostProtection);
