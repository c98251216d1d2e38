using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Compost;

/// <summary>Fresh material for a compost heap, by the cubic metre.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record CompostMix(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("compost-mix", "compost-mixes.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Dry matter [kg/m³], from 50 to 600.</summary>
    public required double DryKgPerM3 { get; init; }

    /// <summary>Share of the dry matter that can rot in the end [0…1], from 0.05 to 0.95.</summary>
    public required double DegradableShare { get; init; }

    /// <summary>First-order rate at which it rots at 20 °C [1/d], from 0.0002 to 0.05.</summary>
    public required double RatePerDay { get; init; }

    /// <summary>Heat released per kilogram that rots [J/kg], from 5.0e6 to 2.5e7.</summary>
    public required double HeatJPerKg { get; init; }

    /// <summary>Share of water by weight when built [0…1], from 0.3 to 0.8.</summary>
    public required double Moisture { get; init; }

    internal static CompostMix Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.CubicMetre]))
    {
        DryKgPerM3 = cells.Number("dry_kg_per_m3", 50, 600, "Dry matter [kg/m³]"),
        DegradableShare = cells.Number("degradable_share", 0.05, 0.95, "Share of the dry matter that can rot in the end [0…1]"),
        RatePerDay = cells.Number("rate_per_day", 0.0002, 0.05, "First-order rate at which it rots at 20 °C [1/d]"),
        HeatJPerKg = cells.Number("heat_j_per_kg", 5.0e6, 2.5e7, "Heat released per kilogram that rots [J/kg]"),
        Moisture = cells.Number("moisture", 0.3, 0.8, "Share of water by weight when built [0…1]"),
    };
}
