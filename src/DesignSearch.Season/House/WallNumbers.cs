namespace DesignSearch.Season.House;

/// <summary>A solid back wall: an inner surface without mass, the mass behind it, the outside or a room behind that.</summary>
/// <param name="AreaM2">Area [m²]; 0 without one. It is not part of the cover.</param>
/// <param name="InnerResistanceM2KPerW">From the inner surface to the mass, without film [m²K/W], above 0.</param>
/// <param name="OuterResistanceM2KPerW">From the mass to the air outside or in the room, that film included [m²K/W], above 0.</param>
/// <param name="CapacityJPerM2K">Heat capacity of the mass [J/(m²K)].</param>
/// <param name="SunShare">Share of the sun in the house that strikes it [0…1].</param>
public sealed record WallNumbers(double AreaM2, double InnerResistanceM2KPerW, double OuterResistanceM2KPerW, double CapacityJPerM2K, double SunShare)
{
    /// <summary>No wall.</summary>
    public static WallNumbers None { get; } = new(0, 1, 1, 0, 0);

    /// <summary>True where a heated room lies behind it, whose heat comes by <see cref="Walls.RoomBehindNumbers"/>; else the open air does.</summary>
    public bool HasRoomBehind { get; init; }

    /// <summary>From the air of the house to the air behind it, with the inside film of EN 673 [W/K].</summary>
    public double ConductanceWPerK => AreaM2 / (1 / SheetResistance.InsideFilmWPerM2K + InnerResistanceM2KPerW + OuterResistanceM2KPerW);
}
