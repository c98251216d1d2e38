using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Skin;

/// <summary>A cover that is drawn at night, by the square metre of cover area.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record NightCover(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("night-cover", "night-covers.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Resistance that it adds while closed, its air gap included [m²K/W], from 0.01 to 5.</summary>
    public required double ResistanceM2KPerW { get; init; }

    /// <summary>Share of the cover area that its edges leave bare [0…1], from 0 to 0.9.</summary>
    public required double EdgeLeak { get; init; }

    /// <summary>Whether a motor draws it; then it needs a cover motor from the small parts.</summary>
    public required bool IsAutomatic { get; init; }

    internal static NightCover Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.SquareMetre]))
    {
        ResistanceM2KPerW = cells.Number("resistance_m2k_per_w", 0.01, 5, "Resistance that it adds while closed, its air gap included [m²K/W]"),
        EdgeLeak = cells.Number("edge_leak", 0, 0.9, "Share of the cover area that its edges leave bare [0…1]"),
        IsAutomatic = cells.YesNo("automatic", "Whether a motor draws it; then it needs a cover motor from the small parts"),
    };
}
