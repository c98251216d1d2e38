namespace DesignSearch.Season.House;

/// <summary>What stands in a house and stores heat: pots, beds, paving, benches. One temperature, coupled to the air, seen by the cover.</summary>
/// <param name="CapacityJPerM2K">Heat capacity that a night reaches [J/K per m² of floor]; 0 without any.</param>
/// <param name="AirWPerM2K">To the air, half of its own depth in series [W/K per m² of floor].</param>
/// <param name="FloorShare">Share of the floor that it hides from the cover [0…1].</param>
public sealed record ContentsNumbers(double CapacityJPerM2K, double AirWPerM2K, double FloorShare)
{
    /// <summary>Nothing.</summary>
    public static ContentsNumbers None { get; } = new(0, 0, 0);
}
