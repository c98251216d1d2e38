namespace DesignSearch.Layouts.Design.Brief;

/// <summary>The wall that a lean-to leans on.</summary>
/// <param name="AzimuthDeg">On which side of the house it stands, clockwise from true north [°].</param>
/// <param name="TopM">Its top above the floor of the house [m].</param>
/// <param name="UWPerM2K">U-value with the films of EN 673 on both sides [W/(m²K)].</param>
/// <param name="CapacityKjPerM2K">Heat capacity [kJ/(m²K)].</param>
/// <param name="Behind">What lies behind it.</param>
/// <param name="RoomC">Temperature of a heated room behind it [°C].</param>
public sealed record BackWall(double AzimuthDeg, double TopM, double UWPerM2K, double CapacityKjPerM2K, BehindWall Behind, double RoomC);
