using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Compost;

/// <summary>What is wrapped round a compost heap, by the square metre.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record CompostWrap(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("compost-wrap", "compost-wraps.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Resistance when moist [m²K/W], from 0.01 to 10.</summary>
    public required double ResistanceM2KPerW { get; init; }

    /// <summary>Whether it burns when dry, as straw does: the heap must then stand clear of the house.</summary>
    public required bool Burns { get; init; }

    internal static CompostWrap Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.SquareMetre]))
    {
        ResistanceM2KPerW = cells.Number("resistance_m2k_per_w", 0.01, 10, "Resistance when moist [m²K/W]"),
        Burns = cells.YesNo("burns", "Whether it burns when dry, as straw does: the heap must then stand clear of the house"),
    };
}
