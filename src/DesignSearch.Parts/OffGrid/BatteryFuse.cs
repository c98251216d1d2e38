using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.OffGrid;

/// <summary>A fuse with its holder that stands at a battery and breaks the current of a dead short across it.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record BatteryFuse(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("battery-fuse", "battery-fuses.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Its size [A], from 1 to 500.</summary>
    public required double RatedA { get; init; }

    /// <summary>Current of a dead short that it breaks, at direct current [A], from 10 to 100000.</summary>
    public required double BreaksA { get; init; }

    /// <summary>Largest direct voltage at which it breaks that [V], from 12 to 1500.</summary>
    public required double MostV { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating switch
    {
        Rating.CurrentA => RatedA,
        Rating.BreakingA => BreaksA,
        Rating.VoltageV => MostV,
        _ => base.Bears(rating),
    };

    internal static BatteryFuse Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        RatedA = cells.Number("rated_a", 1, 500, "Its size [A]"),
        BreaksA = cells.Number("breaks_a", 10, 100000, "Current of a dead short that it breaks, at direct current [A]"),
        MostV = cells.Number("most_v", 12, 1500, "Largest direct voltage at which it breaks that [V]"),
    };
}
