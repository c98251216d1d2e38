using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>Plants of which no layout of a set is better than all.</summary>
/// <param name="Usual">Their stores are emptied as they are set; the least current of these is the least of the set. None where too much is open to say.</param>
/// <param name="Sparing">Their stores are kept for the last moment: a set has frost only where these and the others all have it.</param>
/// <param name="Plane">What falls on their collectors in a winter; null without any.</param>
/// <param name="IsWide">Whether stores or what empties them are still open, so that a little frost says nothing.</param>
internal sealed record Optimum(IReadOnlyList<Installation> Usual, IReadOnlyList<Installation> Sparing, Func<Winter, PlaneIrradiance?> Plane, bool IsWide);
