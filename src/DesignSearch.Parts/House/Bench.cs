using DesignSearch.Files;

namespace DesignSearch.Parts;

/// <summary>A heated bench under fleece, by the square metre.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Bench(PartInfo Info) : Part(Info)
{
    /// <inheritdoc/>
    public override string Kind => "bench";

    /// <summary>Power [W/m²], from 10 to 400.</summary>
    public required double WattsPerM2 { get; init; }

    /// <summary>Kelvin by which the fleece alone lies above the house air at night [K], from 0 to 10.</summary>
    public required double FleeceGainK { get; init; }

    /// <summary>Supply [V], from 5 to 400.</summary>
    public required double Volts { get; init; }

    internal static Bench Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.SquareMetre]))
    {
        WattsPerM2 = cells.Number("watts_per_m2", 10, 400, "Power [W/m²]"),
        FleeceGainK = cells.Number("fleece_gain_k", 0, 10, "Kelvin by which the fleece alone lies above the house air at night [K]"),
        Volts = cells.Number("volts", 5, 400, "Supply [V]"),
    };
}
