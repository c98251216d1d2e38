using DesignSearch.Layouts.Design.Choices;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>What the search of one way came to.</summary>
/// <param name="Layout">The cheapest that holds, else the nearest to it; null where there is none to try.</param>
/// <param name="IsExact">Whether every layout of the way was tried.</param>
/// <param name="Tried">How many were simulated.</param>
internal sealed record WayFound(Layout? Layout, bool IsExact, long Tried);
