using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Something that stands in most greenhouses and stores the day's heat for the night. Shares of the floor are a usual arrangement, not a rule.</summary>
/// <param name="Word">What a builder calls it.</param>
/// <param name="CapacityKjPerM2K">Heat capacity that a night reaches [kJ/K per m² of floor].</param>
/// <param name="SurfaceShare">Surface that air passes [m² per m² of floor].</param>
/// <param name="FloorShare">Share of the floor that it hides from the cover [0…1].</param>
/// <param name="DepthM2KPerW">From the surface to the middle of what a night reaches [m²K/W].</param>
/// <param name="Where">How these figures come about.</param>
public sealed record HouseContents(string Word, double CapacityKjPerM2K, double SurfaceShare, double FloorShare, double DepthM2KPerW, string Where)
{
    // Still air at a surface, EN ISO 6946, heat flow level [W/(m²K)].
    private const double FilmWPerM2K = 2.5;
    private const double JoulesPerKilojoule = 1000;

    /// <summary>All there are.</summary>
    public static IReadOnlyList<HouseContents> All { get; } =
    [
        new("pots", 107, 1, 0.5, 0.1, "10 cm deep on half the floor, half wet: peat of 2.13 MJ/(m³K) and 0.27 W/(m·K), Moene and van Dam after De Vries 1963"),
        new("beds", 125, 0.8, 0.5, 0.05, "beds of moist loam 30 cm high on half the floor, of which a night reaches a third: 2.3 MJ/(m³K), 0.9 W/(m·K) (from memory)"),
        new("paving", 34, 0.33, 0.33, 0.02, "slabs of 5 cm on a third of the floor: 2.06 MJ/(m³K), 1.3 W/(m·K) (from memory)"),
        new("benches", 10, 1, 0.3, 0.05, "boards of 2 cm on half the floor, with gaps: 1 MJ/(m³K), 0.14 W/(m·K) (from memory)"),
    ];

    /// <summary>Their words.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. All.Select(c => c.Word)];

    /// <summary>Several of them as one store.</summary>
    /// <param name="contents">What stands in the house.</param>
    public static ContentsNumbers Numbers(IReadOnlyList<HouseContents> contents)
    {
        ArgumentNullException.ThrowIfNull(contents);
        return contents.Count == 0 ? ContentsNumbers.None : new(
            contents.Sum(c => c.CapacityKjPerM2K) * JoulesPerKilojoule,
            contents.Sum(c => c.SurfaceShare / (1 / FilmWPerM2K + c.DepthM2KPerW)),
            Math.Min(MostHidden, contents.Sum(c => c.FloorShare)));
    }

    // Someone has to walk.
    private const double MostHidden = 0.8;
}
