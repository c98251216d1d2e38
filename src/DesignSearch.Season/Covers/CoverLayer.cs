namespace DesignSearch.Season.Covers;

/// <summary>One sheet or film of a cover.</summary>
/// <param name="ResistanceM2KPerW">From its one face to the other [m²K/W], 0 or more.</param>
/// <param name="LongWave">Share of heat radiation that it lets through [0…1].</param>
/// <param name="Emissivity">Share that it takes in and gives off, on either face [0…1]; with <paramref name="LongWave"/> at most 1.</param>
public sealed record CoverLayer(double ResistanceM2KPerW, double LongWave, double Emissivity)
{
    /// <summary>Window glass of 4 mm: 1 W/(m·K) (from memory), emissivity of EN 673.</summary>
    public static CoverLayer Glass { get; } = new(0.004, 0, 0.837);
}
