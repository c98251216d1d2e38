using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Piping;

/// <summary>A vessel with a membrane that takes up the growth of what is warmed in a closed loop or tank.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record ExpansionVessel(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("expansion-vessel", "expansion-vessels.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Size of the whole vessel [L], from 1 to 1000.</summary>
    public required double Litres { get; init; }

    /// <summary>Pressure above that of the air that it stands [bar], from 0.5 to 25.</summary>
    public required double MaxBar { get; init; }

    /// <summary>Hottest that its membrane stands [°C], from 40 to 200.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating switch
    {
        Rating.TemperatureC => MaxTemperatureC,
        Rating.PressureBar => MaxBar,
        _ => null,
    };

    internal static ExpansionVessel Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        Litres = cells.Number("litres", 1, 1000, "Size of the whole vessel [L]"),
        MaxBar = cells.Number("max_bar", 0.5, 25, "Pressure above that of the air that it stands [bar]"),
        MaxTemperatureC = cells.Number("max_temperature_c", 40, 200, "Hottest that its membrane stands [°C]"),
    };
}
