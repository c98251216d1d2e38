using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Compost;

/// <summary>Pipe laid in a compost heap, by the metre.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record CompostCoil(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("compost-coil", "compost-coils.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(BoreMm < OuterMm, "bore_mm", "less than outer_mm"),
    ];

    /// <summary>Inner diameter [mm], from 4 to 100.</summary>
    public required double BoreMm { get; init; }

    /// <summary>Outer diameter [mm], from 5 to 120.</summary>
    public required double OuterMm { get; init; }

    /// <summary>Heat that passes per metre and kelvin in moist compost [W/(m·K)], from 0.1 to 5.</summary>
    public required double WPerMK { get; init; }

    /// <summary>Hottest heap that it stands [°C], from 40 to 150.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TemperatureC ? MaxTemperatureC : base.Bears(rating);

    internal static CompostCoil Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Metre]))
    {
        BoreMm = cells.Number("bore_mm", 4, 100, "Inner diameter [mm]"),
        OuterMm = cells.Number("outer_mm", 5, 120, "Outer diameter [mm]"),
        WPerMK = cells.Number("w_per_mk", 0.1, 5, "Heat that passes per metre and kelvin in moist compost [W/(m·K)]"),
        MaxTemperatureC = cells.Number("max_temperature_c", 40, 150, "Hottest heap that it stands [°C]"),
    };
}
