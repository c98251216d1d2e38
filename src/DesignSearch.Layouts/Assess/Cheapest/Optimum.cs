using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Winters;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>Plants of which no layout of a set is better than all: a set has frost only where all of them have it, and the least current of them is the least of the set.</summary>
/// <param name="Plants">The plants, one or more.</param>
/// <param name="Plane">What falls on their collectors in a winter; null without any.</param>
/// <param name="IsWide">Whether stores are still open, so that a little frost says nothing.</param>
internal sealed record Optimum(IReadOnlyList<Installation> Plants, Func<Winter, PlaneIrradiance?> Plane, bool IsWide);
