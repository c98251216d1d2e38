namespace DesignSearch.Layouts.Assess.Checks;

/// <summary>What one check costs: how many layouts it refuses before any season is simulated, and the cheapest that it alone stands against.</summary>
/// <param name="CheckId">Name of the check.</param>
/// <param name="Layouts">Layouts looked at that it refuses.</param>
/// <param name="Alone">Those among them that every other check lets pass.</param>
/// <param name="CheapestAlone">Build price of the cheapest of these; null where there is none.</param>
/// <param name="LookedAt">How many layouts were looked at: all there are, or a fixed number drawn by chance.</param>
public sealed record Refusal(string CheckId, int Layouts, int Alone, decimal? CheapestAlone, int LookedAt);
