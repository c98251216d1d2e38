namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>The cheapest layout of one way that holds, or the nearest to it.</summary>
/// <param name="Name">The way in a few words.</param>
/// <param name="Best">The layout; null where none passed every check.</param>
/// <param name="WhyNone">Why there is none, in plain words; empty where there is one.</param>
public sealed record Way(string Name, WayLayout? Best, string WhyNone);
