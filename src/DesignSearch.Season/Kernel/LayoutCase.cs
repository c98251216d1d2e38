using DesignSearch.Climate;

namespace DesignSearch.Season;

/// <summary>One layout to be carried through a winter.</summary>
/// <param name="Installation">Its numbers.</param>
/// <param name="Plane">What falls on its collector in that winter; null without a collector.</param>
public sealed record LayoutCase(Installation Installation, PlaneIrradiance? Plane);
