using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Solar;

/// <summary>A water tank.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Tank(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("tank", "tanks.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Water that it holds [L], from 20 to 20000.</summary>
    public required double VolumeL { get; init; }

    /// <summary>Outer surface [m²], from 0.2 to 100.</summary>
    public required double SurfaceM2 { get; init; }

    /// <summary>Heat loss as delivered, its own insulation included [W/K], from 0.2 to 500.</summary>
    public required double LossWPerK { get; init; }

    /// <summary>Hottest water that it stands for long [°C], from 30 to 110.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <summary>Floor that it covers [m²], from 0.05 to 50.</summary>
    public required double FootprintM2 { get; init; }

    /// <summary>Height [m], from 0.1 to 5.</summary>
    public required double HeightM { get; init; }

    /// <summary>Weight when empty [kg], from 1 to 3000.</summary>
    public required double EmptyKg { get; init; }

    /// <summary>Whether it is closed and under pressure; then it needs relief, vent and expansion.</summary>
    public required bool IsClosed { get; init; }

    /// <summary>Pressure above that of the air that a closed one stands [bar], from 0.1 to 20; null where its row does not say.</summary>
    public double? MaxBar { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating switch
    {
        Rating.TemperatureC => MaxTemperatureC,
        Rating.PressureBar => MaxBar,
        _ => null,
    };

    internal static Tank Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        VolumeL = cells.Number("volume_l", 20, 20000, "Water that it holds [L]"),
        SurfaceM2 = cells.Number("surface_m2", 0.2, 100, "Outer surface [m²]"),
        LossWPerK = cells.Number("loss_w_per_k", 0.2, 500, "Heat loss as delivered, its own insulation included [W/K]"),
        MaxTemperatureC = cells.Number("max_temperature_c", 30, 110, "Hottest water that it stands for long [°C]"),
        FootprintM2 = cells.Number("footprint_m2", 0.05, 50, "Floor that it covers [m²]"),
        HeightM = cells.Number("height_m", 0.1, 5, "Height [m]"),
        EmptyKg = cells.Number("empty_kg", 1, 3000, "Weight when empty [kg]"),
        IsClosed = cells.YesNo("closed", "Whether it is closed and under pressure; then it needs relief, vent and expansion"),
        MaxBar = cells.NumberIfAny("max_bar", 0.1, 20, "Pressure above that of the air that a closed one stands [bar]"),
    };
}
