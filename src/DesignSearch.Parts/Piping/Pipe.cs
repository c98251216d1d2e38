using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Piping;

/// <summary>Pipe by the metre.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Pipe(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("pipe", "pipes.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(BoreMm < OuterMm, "bore_mm", "less than outer_mm"),
    ];

    /// <summary>Inner diameter [mm], from 4 to 150.</summary>
    public required double BoreMm { get; init; }

    /// <summary>Outer diameter [mm], from 5 to 200.</summary>
    public required double OuterMm { get; init; }

    /// <summary>Hottest water that it stands for long [°C], from 30 to 400.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <summary>Roughness of the bore [µm], from 0 to 500.</summary>
    public required double RoughnessUm { get; init; }

    /// <summary>Heat capacity of the empty pipe [J/(m·K)], from 10 to 5000.</summary>
    public required double WallCapacityJPerMK { get; init; }

    /// <summary>Whether it is metal: the first metres at a glazed collector must be.</summary>
    public required bool IsMetal { get; init; }

    /// <summary>Whether it stands sunlight.</summary>
    public required bool IsOutdoor { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TemperatureC ? MaxTemperatureC : base.Bears(rating);

    internal static Pipe Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Metre]))
    {
        BoreMm = cells.Number("bore_mm", 4, 150, "Inner diameter [mm]"),
        OuterMm = cells.Number("outer_mm", 5, 200, "Outer diameter [mm]"),
        MaxTemperatureC = cells.Number("max_temperature_c", 30, 400, "Hottest water that it stands for long [°C]"),
        RoughnessUm = cells.Number("roughness_um", 0, 500, "Roughness of the bore [µm]"),
        WallCapacityJPerMK = cells.Number("wall_capacity_j_per_mk", 10, 5000, "Heat capacity of the empty pipe [J/(m·K)]"),
        IsMetal = cells.YesNo("metal", "Whether it is metal: the first metres at a glazed collector must be"),
        IsOutdoor = cells.YesNo("outdoor", "Whether it stands sunlight"),
    };
}
