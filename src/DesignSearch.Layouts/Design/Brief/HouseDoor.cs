namespace DesignSearch.Layouts.Design.Brief;

/// <summary>A door, or another opening that is shut, in an end of the house: what is not covered as the rest.</summary>
/// <param name="AreaM2">Its area [m²]; 0 without one.</param>
/// <param name="UWPerM2K">U-value with the films of EN 673 on both sides [W/(m²K)].</param>
/// <param name="Light">Light it lets through at normal incidence [0…1].</param>
/// <param name="LeakM3PerH">Air that goes through its joints while it is shut, beside what the rest of the house lets through [m³/h].</param>
public sealed record HouseDoor(double AreaM2, double UWPerM2K, double Light, double LeakM3PerH)
{
    /// <summary>No door that is told apart.</summary>
    public static HouseDoor None { get; } = new(0, 1, 0, 0);
}
