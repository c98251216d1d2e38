using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Piping;

/// <summary>Insulation for pipe, by the metre of pipe.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record PipeInsulation(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("pipe-insulation", "pipe-insulations.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(InnerFromMm <= InnerToMm, "inner_from_mm", "at most inner_to_mm"),
    ];

    /// <summary>Thinnest pipe that it fits, outer diameter [mm], from 5 to 200.</summary>
    public required double InnerFromMm { get; init; }

    /// <summary>Thickest pipe that it fits, outer diameter [mm], from 5 to 200.</summary>
    public required double InnerToMm { get; init; }

    /// <summary>Thickness [mm], from 3 to 200.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Conductivity, dry [W/(m·K)], from 0.015 to 0.2.</summary>
    public required double ConductivityWPerMK { get; init; }

    /// <summary>Hottest pipe that it stands [°C], from 40 to 400.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <summary>Whether it stands sunlight and rain as delivered.</summary>
    public required bool IsOutdoor { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TemperatureC ? MaxTemperatureC : base.Bears(rating);

    internal static PipeInsulation Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Metre]))
    {
        InnerFromMm = cells.Number("inner_from_mm", 5, 200, "Thinnest pipe that it fits, outer diameter [mm]"),
        InnerToMm = cells.Number("inner_to_mm", 5, 200, "Thickest pipe that it fits, outer diameter [mm]"),
        ThicknessMm = cells.Number("thickness_mm", 3, 200, "Thickness [mm]"),
        ConductivityWPerMK = cells.Number("conductivity_w_per_mk", 0.015, 0.2, "Conductivity, dry [W/(m·K)]"),
        MaxTemperatureC = cells.Number("max_temperature_c", 40, 400, "Hottest pipe that it stands [°C]"),
        IsOutdoor = cells.YesNo("outdoor", "Whether it stands sunlight and rain as delivered"),
    };
}
