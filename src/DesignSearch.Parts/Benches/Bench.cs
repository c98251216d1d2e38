using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Parts.Benches;

/// <summary>A bench under fleece, heated or not, by the square metre.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Bench(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("bench", "benches.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(WattsPerM2 > 0 == Volts > 0, "volts", "0 for fleece alone, the supply's for a heated bench"),
    ];

    /// <summary>Power [W/m²], from 0 (fleece alone) to 400.</summary>
    public required double WattsPerM2 { get; init; }

    /// <summary>Heat that fleece, sides and board let out, over the area of the bench [W/(m²K)], from 0.5 to 15.</summary>
    public required double FleeceWPerM2K { get; init; }

    /// <summary>Supply [V], from 5 to 400; 0 for fleece alone.</summary>
    public required double Volts { get; init; }

    /// <inheritdoc/>
    public override bool RunsOnMains => !ExtraLowVoltage.Includes(Volts, false);

    internal static Bench Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.SquareMetre]))
    {
        WattsPerM2 = cells.Number("watts_per_m2", 0, 400, "Power [W/m²], 0 for fleece alone"),
        FleeceWPerM2K = cells.Number("fleece_w_per_m2k", 0.5, 15, "Heat that fleece, sides and board let out, over the area of the bench [W/(m²K)]"),
        Volts = cells.Number("volts", 0, 400, "Supply [V], 0 for fleece alone"),
    };
}
