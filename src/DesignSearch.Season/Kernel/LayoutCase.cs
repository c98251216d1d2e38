using DesignSearch.Climate.Plane;

namespace DesignSearch.Season.Kernel;

/// <summary>One layout as the season model meets it.</summary>
/// <param name="Installation">Its numbers.</param>
/// <param name="Plane">What falls on the collector's plane; null only without a collector.</param>
public sealed record LayoutCase(Installation Installation, PlaneIrradiance? Plane);
