namespace DesignSearch.Search.Proof;

/// <summary>How a set of points was split.</summary>
/// <param name="Parts">Sets that together hold all its points, none of them empty.</param>
/// <param name="ShowsInSimulation">False where the parts differ in price alone, so that simulating them tells nothing new.</param>
public sealed record Branching(IReadOnlyList<LevelSets> Parts, bool ShowsInSimulation);
