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

    /// <summary>Who draws it: by motor it needs cover motors from the small parts, and a light sensor or a timer.</summary>
    public required CoverDrive Drive { get; init; }

    /// <summary>True where a motor draws it.</summary>
    public bool IsAutomatic => Drive != CoverDrive.Hand;

    internal static NightCover Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.SquareMetre]))
    {
        ResistanceM2KPerW = cells.Number("resistance_m2k_per_w", 0.01, 5, "Resistance that it adds while closed, its air gap included [m²K/W]"),
        EdgeLeak = cells.Number("edge_leak", 0, 0.9, "Share of the cover area that its edges leave bare [0…1]"),
        Drive = cells.Word(
            "automatic",
            [("no", CoverDrive.Hand), ("yes", CoverDrive.Sensor), ("clock", CoverDrive.Clock)],
            "Whether a motor draws it: yes by a light sensor, clock by a timer; then it needs a cover motor from the small parts"),
    };
}
