using DesignSearch.Layouts.Design;

namespace DesignSearch.Layouts.Systems.Benches;

/// <summary>A bench that is enough for all plants that must live.</summary>
/// <param name="AreaM2">Its area [m²], above 0.</param>
public sealed record BenchWish(double AreaM2) : SystemWish;
