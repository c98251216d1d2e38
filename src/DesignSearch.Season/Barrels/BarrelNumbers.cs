namespace DesignSearch.Season.Barrels;

/// <summary>Water barrels in the house, all alike.</summary>
/// <param name="WaterKg">Water in all of them [kg]; 0 without barrels.</param>
/// <param name="SurfaceM2">Their surface towards the air [m²].</param>
/// <param name="SunShare">Share of the sun in the house that strikes them [0…1].</param>
public sealed record BarrelNumbers(double WaterKg, double SurfaceM2, double SunShare)
{
    /// <summary>No barrels.</summary>
    public static BarrelNumbers None { get; } = new(0, 0, 0);
}
