using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Hydraulics;

namespace DesignSearch.Parts.Piping;

/// <summary>Antifreeze, ready mixed, by the litre.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Antifreeze(PartInfo Info) : Part(Info)
{
    // Tables of propylene glycol differ by as much; a maker's word may be this much better than the mix alone.
    private const double TablesDifferK = 1;

    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("antifreeze", "antifreezes.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(
            FreezesC >= PropyleneGlycol.FreezesAtC(GlycolPercent / 100) - TablesDifferK,
            "freezes_c",
            "not more than 1 K below what so much propylene glycol by mass freezes at (Melinder 2010)"),
    ];

    /// <summary>Propylene glycol in it, by mass [%], from 5 to 50.</summary>
    public required double GlycolPercent { get; init; }

    /// <summary>Temperature down to which it stays free of ice [°C], from -40 to 0.</summary>
    public required double FreezesC { get; init; }

    /// <summary>Hottest that it stands for long [°C], from 60 to 300.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TemperatureC ? MaxTemperatureC : base.Bears(rating);

    internal static Antifreeze Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Litre]))
    {
        GlycolPercent = cells.Number("glycol_percent", 5, 50, "Propylene glycol in it, by mass [%]"),
        FreezesC = cells.Number("freezes_c", -40, 0, "Temperature down to which it stays free of ice [°C]"),
        MaxTemperatureC = cells.Number("max_temperature_c", 60, 300, "Hottest that it stands for long [°C]"),
    };
}
