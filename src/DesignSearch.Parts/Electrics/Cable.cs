using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.Electrics;

/// <summary>Copper cable by the metre.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Cable(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("cable", "cables.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(
            CopperResistance.IsListed(SectionMm2, ConductorClass),
            "section_mm2",
            "a cross-section that IEC 60228 lists for class 1, 2 or 5: 0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16 or 25"),
    ];

    /// <summary>Conductors in it, the earth among them, from 2 to 12.</summary>
    public required int Cores { get; init; }

    /// <summary>Cross-section of a conductor [mm²], from 0.5 to 25.</summary>
    public required double SectionMm2 { get; init; }

    /// <summary>Class after IEC 60228: 1 or 2 for fixed wiring, 5 for flexible, from 1 to 5.</summary>
    public required int ConductorClass { get; init; }

    /// <summary>Current that it may carry as laid; an order of magnitude, the local code decides [A], from 0.5 to 200.</summary>
    public required double RatedA { get; init; }

    /// <summary>Highest voltage that it is made for [V], from 12 to 1000.</summary>
    public required double MaxVolts { get; init; }

    /// <summary>Whether it may lie outdoors or in the ground as delivered.</summary>
    public required bool IsOutdoor { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.CurrentA ? RatedA : base.Bears(rating);

    internal static Cable Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Metre]))
    {
        Cores = cells.Whole("cores", 2, 12, "Conductors in it, the earth among them"),
        SectionMm2 = cells.Number("section_mm2", 0.5, 25, "Cross-section of a conductor [mm²]"),
        ConductorClass = cells.Whole("conductor_class", 1, 5, "Class after IEC 60228: 1 or 2 for fixed wiring, 5 for flexible"),
        RatedA = cells.Number("rated_a", 0.5, 200, "Current that it may carry as laid; an order of magnitude, the local code decides [A]"),
        MaxVolts = cells.Number("max_volts", 12, 1000, "Highest voltage that it is made for [V]"),
        IsOutdoor = cells.YesNo("outdoor", "Whether it may lie outdoors or in the ground as delivered"),
    };
}
