using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Barrels;

/// <summary>A water barrel that stands in the house as a store.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Barrel(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("barrel", "barrels.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Water that it holds [L], from 5 to 1500.</summary>
    public required double VolumeL { get; init; }

    /// <summary>Diameter [m], from 0.1 to 2.</summary>
    public required double DiameterM { get; init; }

    /// <summary>Height [m], from 0.1 to 2.5.</summary>
    public required double HeightM { get; init; }

    /// <summary>Weight when empty [kg], from 0.2 to 200.</summary>
    public required double EmptyKg { get; init; }

    internal static Barrel Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        VolumeL = cells.Number("volume_l", 5, 1500, "Water that it holds [L]"),
        DiameterM = cells.Number("diameter_m", 0.1, 2, "Diameter [m]"),
        HeightM = cells.Number("height_m", 0.1, 2.5, "Height [m]"),
        EmptyKg = cells.Number("empty_kg", 0.2, 200, "Weight when empty [kg]"),
    };
}
