namespace DesignSearch.Cli;

/// <summary>The three picks of a summary.</summary>
/// <param name="CheapestThatHolds">Lowest life cost among those that hold.</param>
/// <param name="BestValue">Most frost-free hours per unit of life cost.</param>
/// <param name="MostProtection">Fewest frost degree-hours within the budget.</param>
public sealed record SummaryPicks(SummaryLayout? CheapestThatHolds, SummaryLayout? BestValue, SummaryLayout? MostProtection);
