using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Skin;

/// <summary>A permanent lining under the cover, by the square metre.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Lining(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("lining", "linings.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Resistance that it adds, its air gap included [m²K/W], from 0.01 to 5.</summary>
    public required double ResistanceM2KPerW { get; init; }

    /// <summary>Light that it lets through [0…1], from 0 to 1.</summary>
    public required double Transmittance { get; init; }

    internal static Lining Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.SquareMetre]))
    {
        ResistanceM2KPerW = cells.Number("resistance_m2k_per_w", 0.01, 5, "Resistance that it adds, its air gap included [m²K/W]"),
        Transmittance = cells.Number("transmittance", 0, 1, "Light that it lets through [0…1]"),
    };
}
