using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.OffGrid;

/// <summary>What holds one photovoltaic panel steeply, with its anchors.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record PanelBracket(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("panel-bracket", "panel-brackets.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Push or pull of the wind on the panel's middle that it holds as it is fixed [N], from 50 to 20000.</summary>
    public required double HoldsN { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.ForceN ? HoldsN : base.Bears(rating);

    internal static PanelBracket Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        HoldsN = cells.Number("holds_n", 50, 20000, "Push or pull of the wind on the panel's middle that it holds as it is fixed [N]"),
    };
}
