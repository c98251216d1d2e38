using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Solar;

/// <summary>Insulation to wrap round a tank.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record TankJacket(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("tank-jacket", "tank-jackets.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Thickness [mm], from 5 to 500.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Conductivity, dry [W/(m·K)], from 0.015 to 0.2.</summary>
    public required double ConductivityWPerMK { get; init; }

    /// <summary>Hottest surface that it stands [°C], from 40 to 300.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TemperatureC ? MaxTemperatureC : base.Bears(rating);

    internal static TankJacket Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.SquareMetre]))
    {
        ThicknessMm = cells.Number("thickness_mm", 5, 500, "Thickness [mm]"),
        ConductivityWPerMK = cells.Number("conductivity_w_per_mk", 0.015, 0.2, "Conductivity, dry [W/(m·K)]"),
        MaxTemperatureC = cells.Number("max_temperature_c", 40, 300, "Hottest surface that it stands [°C]"),
    };
}
