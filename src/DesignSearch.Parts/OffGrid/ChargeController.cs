using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.OffGrid;

/// <summary>A charge controller between panel and battery that finds the panel's best voltage.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record ChargeController(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("charge-controller", "charge-controllers.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Voltage of the battery that it charges [V], from 6 to 60.</summary>
    public required double Volts { get; init; }

    /// <summary>Largest charging current [A], from 1 to 200.</summary>
    public required double RatedA { get; init; }

    /// <summary>Largest voltage of the panels that it stands, with nothing drawn from them [V], from 10 to 500.</summary>
    public required double MostV { get; init; }

    /// <summary>Power that it draws by itself day and night [W], from 0.01 to 20.</summary>
    public required double OwnW { get; init; }

    /// <summary>Share of the panel's power that it passes on [0…1], from 0.5 to 0.99.</summary>
    public required double Efficiency { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating switch
    {
        Rating.CurrentA => RatedA,
        Rating.VoltageV => MostV,
        _ => base.Bears(rating),
    };

    internal static ChargeController Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        Volts = cells.Number("volts", 6, 60, "Voltage of the battery that it charges [V]"),
        RatedA = cells.Number("rated_a", 1, 200, "Largest charging current [A]"),
        MostV = cells.Number("most_v", 10, 500, "Largest voltage of the panels that it stands, with nothing drawn from them [V]"),
        OwnW = cells.Number("own_w", 0.01, 20, "Power that it draws by itself day and night [W]"),
        Efficiency = cells.Number("efficiency", 0.5, 0.99, "Share of the panel's power that it passes on [0…1]"),
    };
}
