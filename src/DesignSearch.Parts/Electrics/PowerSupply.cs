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

    /// <summary>Share of the power that it takes that it passes on [0…1], from 0.3 to 0.99.</summary>
    public required double Efficiency { get; init; }

    /// <summary>Whether it is fed by a battery of 24 V in place of the mains.</summary>
    public required bool IsOnBattery { get; init; }

    /// <inheritdoc/>
    public override bool RunsOnMains => !IsOnBattery;

    internal static PowerSupply Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        Watts = cells.Number("watts", 1, 2000, "Power that it gives without rest [W]"),
        Volts = cells.Number("volts", 5, 60, "Voltage that it gives [V]"),
        Efficiency = cells.Number("efficiency", 0.3, 0.99, "Share of the power that it takes that it passes on [0…1]"),
        IsOnBattery = cells.YesNo("battery", "Whether it is fed by a battery of 24 V in place of the mains"),
    };
}
