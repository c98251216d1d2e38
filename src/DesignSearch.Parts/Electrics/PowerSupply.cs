using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Electrics;

/// <summary>A supply of extra-low voltage for controls, valves and drives.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record PowerSupply(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("supply", "supplies.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Power that it gives without rest [W], from 1 to 2000.</summary>
    public required double Watts { get; init; }

    /// <summary>Voltage that it gives [V], from 5 to 60.</summary>
    public required double Volts { get; init; }

    /// <summary>Share of the mains power that it passes on [0…1], from 0.3 to 0.99.</summary>
    public required double Efficiency { get; init; }

    /// <summary>Whether it goes on for a night without mains.</summary>
    public required bool IsBattery { get; init; }

    internal static PowerSupply Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        Watts = cells.Number("watts", 1, 2000, "Power that it gives without rest [W]"),
        Volts = cells.Number("volts", 5, 60, "Voltage that it gives [V]"),
        Efficiency = cells.Number("efficiency", 0.3, 0.99, "Share of the mains power that it passes on [0…1]"),
        IsBattery = cells.YesNo("battery", "Whether it goes on for a night without mains"),
    };
}
