namespace DesignSearch.Season.Tests;

/// <summary>Reference: where a collector without flow comes to rest, in closed form; the season's own collector is held against it.</summary>
internal static class Stagnation
{
    /// <summary>Rise over the outside air [K]: root of η·G = a1 ΔT + a2 ΔT².</summary>
    public static double RiseK(double absorbedWPerM2, double a1WPerM2K, double a2WPerM2K2) =>
        2 * absorbedWPerM2 / (a1WPerM2K + Math.Sqrt(a1WPerM2K * a1WPerM2K + 4 * a2WPerM2K2 * absorbedWPerM2));
}
