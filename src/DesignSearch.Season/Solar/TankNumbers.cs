namespace DesignSearch.Season.Solar;

/// <summary>A layered tank standing in the house; what it loses warms the house.</summary>
/// <param name="WaterKg">Water [kg]; 0 without a tank.</param>
/// <param name="LossWPerK">Loss to the house air, whole surface [W/K].</param>
/// <param name="CeilingC">Temperature of the top layer above which the collector is stopped [°C].</param>
public sealed record TankNumbers(double WaterKg, double LossWPerK, double CeilingC)
{
    /// <summary>No tank.</summary>
    public static TankNumbers None { get; } = new(0, 0, 60);
}
