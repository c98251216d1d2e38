namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What one check kept the builder from.</summary>
/// <param name="Check">The check in a few plain words.</param>
/// <param name="Title">The cheapest layout found that has no frost hour and fails this check alone.</param>
/// <param name="LifeCost">Its life cost.</param>
/// <param name="Saved">Life cost less than the cheapest that holds.</param>
/// <param name="Sentence">By how much it fails, in a sentence.</param>
public sealed record CheckCost(string Check, string Title, decimal LifeCost, decimal Saved, string Sentence);
