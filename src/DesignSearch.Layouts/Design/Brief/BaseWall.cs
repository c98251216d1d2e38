namespace DesignSearch.Layouts.Design.Brief;

/// <summary>A solid wall round the foot of the house.</summary>
/// <param name="HeightM">Its height above the floor [m]; 0 without one.</param>
/// <param name="UWPerM2K">U-value with the films of EN 673 on both sides [W/(m²K)].</param>
/// <param name="CapacityKjPerM2K">Heat capacity [kJ/(m²K)].</param>
public sealed record BaseWall(double HeightM, double UWPerM2K, double CapacityKjPerM2K)
{
    /// <summary>No wall: the cover goes down to the floor.</summary>
    public static BaseWall None { get; } = new(0, 1, 0);
}
