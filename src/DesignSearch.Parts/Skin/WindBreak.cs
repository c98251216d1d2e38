using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Skin;

/// <summary>A net or hedge on the windward sides of the house.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record WindBreak(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("wind-break", "wind-breaks.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Wind at the house behind it, as a share of that before [0…1], from 0.3 to 1.</summary>
    public required double WindFactor { get; init; }

    internal static WindBreak Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Metre]))
    {
        WindFactor = cells.Number("wind_factor", 0.3, 1, "Wind at the house behind it, as a share of that before [0…1]; only the leakage by wind is reckoned less"),
    };
}
