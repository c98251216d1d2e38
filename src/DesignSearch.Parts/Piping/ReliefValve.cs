using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Piping;

/// <summary>A valve that opens by itself before pressure becomes dangerous.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record ReliefValve(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("relief-valve", "relief-valves.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Pressure above that of the air at which it opens [bar], from 0.5 to 20.</summary>
    public required double OpensAtBar { get; init; }

    /// <summary>Hottest water or steam that it stands [°C], from 60 to 300.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TemperatureC ? MaxTemperatureC : base.Bears(rating);

    internal static ReliefValve Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        OpensAtBar = cells.Number("opens_at_bar", 0.5, 20, "Pressure above that of the air at which it opens [bar]"),
        MaxTemperatureC = cells.Number("max_temperature_c", 60, 300, "Hottest water or steam that it stands [°C]"),
    };
}
