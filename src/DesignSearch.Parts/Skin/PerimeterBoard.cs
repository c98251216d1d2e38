using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Skin;

/// <summary>Insulating board set into the ground round the house, by the metre of edge.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record PerimeterBoard(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("perimeter-board", "perimeter-boards.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Thickness [mm], from 5 to 300.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Depth below ground [m], from 0.1 to 2.</summary>
    public required double DepthM { get; init; }

    /// <summary>Heat lost through the edge afterwards [W/(m·K)], from 0.1 to 2.</summary>
    public required double EdgeLossWPerMK { get; init; }

    internal static PerimeterBoard Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Metre]))
    {
        ThicknessMm = cells.Number("thickness_mm", 5, 300, "Thickness [mm]"),
        DepthM = cells.Number("depth_m", 0.1, 2, "Depth below ground [m]"),
        EdgeLossWPerMK = cells.Number("edge_loss_w_per_mk", 0.1, 2, "Heat lost through the edge afterwards [W/(m·K)]"),
    };
}
