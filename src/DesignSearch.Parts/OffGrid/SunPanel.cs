using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.OffGrid;

/// <summary>A photovoltaic panel. Its figures are those of its plate, at 1000 W/m² and cells of 25 °C.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record SunPanel(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("sun-panel", "sun-panels.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(OpenV > WorkingV, "open_v", "above working_v"),
        new(Watts <= WorkingV * ShortA, "watts", "no more than working_v times short_a"),
    ];

    /// <summary>Peak power [W], from 5 to 1000.</summary>
    public required double Watts { get; init; }

    /// <summary>Voltage at which it gives its peak power [V], from 5 to 80.</summary>
    public required double WorkingV { get; init; }

    /// <summary>Voltage with nothing joined to it [V], from 5 to 100.</summary>
    public required double OpenV { get; init; }

    /// <summary>Share of the open voltage that a kelvin of warmth costs, and of cold adds [1/K], from 0.001 to 0.005.</summary>
    public required double OpenLossPerK { get; init; }

    /// <summary>Current of a dead short [A], from 0.1 to 30.</summary>
    public required double ShortA { get; init; }

    /// <summary>Its face [m²], from 0.02 to 4.</summary>
    public required double AreaM2 { get; init; }

    internal static SunPanel Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        Watts = cells.Number("watts", 5, 1000, "Peak power [W]"),
        WorkingV = cells.Number("working_v", 5, 80, "Voltage at which it gives its peak power [V]"),
        OpenV = cells.Number("open_v", 5, 100, "Voltage with nothing joined to it [V]"),
        OpenLossPerK = cells.Number(
            "open_loss_per_k", 0.001, 0.005, "Share of the open voltage that a kelvin of warmth costs, and of cold adds [1/K]"),
        ShortA = cells.Number("short_a", 0.1, 30, "Current of a dead short [A]"),
        AreaM2 = cells.Number("area_m2", 0.02, 4, "Its face [m²]"),
    };
}
