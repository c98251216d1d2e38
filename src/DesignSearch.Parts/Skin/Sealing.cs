using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Skin;

/// <summary>Seals for doors, vents and laps; one set serves one small house.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Sealing(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("sealing", "sealings.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Air changes afterwards, as a share of those before [0…1], from 0.2 to 1.</summary>
    public required double LeakageFactor { get; init; }

    /// <summary>Largest house that one set serves, by its floor [m²], from 1 to 500.</summary>
    public required double FloorUpToM2 { get; init; }

    internal static Sealing Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Set]))
    {
        LeakageFactor = cells.Number("leakage_factor", 0.2, 1, "Air changes afterwards, as a share of those before [0…1]"),
        FloorUpToM2 = cells.Number("floor_up_to_m2", 1, 500, "Largest house that one set serves, by its floor [m²]"),
    };
}
