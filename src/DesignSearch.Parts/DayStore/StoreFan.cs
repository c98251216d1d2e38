using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Parts.DayStore;

/// <summary>Fan that moves the house's air through a day-heat store; its curve falls as the square of the flow.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record StoreFan(PartInfo Info) : Part(Info)
{
    // Of the best large fans; a small one reaches 0.1 to 0.4 (common practice, no source).
    private const double BestEfficiency = 0.7;

    // Flow and head of a parabola give most power at 1/√3 of the flow: 2/(3√3) of their product.
    private const double BestShare = 0.3849;

    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("store-fan", "store-fans.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Flow against no pressure [m³/h], from 20 to 20000.</summary>
    public required double FlowAtNoHeadM3PerH { get; init; }

    /// <summary>Pressure at no flow [Pa], from 5 to 2000.</summary>
    public required double HeadAtNoFlowPa { get; init; }

    /// <summary>Power [W], from 2 to 6000.</summary>
    public required double Watts { get; init; }

    /// <summary>Supply [V], from 5 to 400.</summary>
    public required double Volts { get; init; }

    /// <inheritdoc/>
    public override bool RunsOnMains => !ExtraLowVoltage.Includes(Volts, false);

    internal static StoreFan Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        FlowAtNoHeadM3PerH = cells.Number("flow_at_no_head_m3_per_h", 20, 20000, "Flow against no pressure [m³/h]"),
        HeadAtNoFlowPa = cells.Number("head_at_no_flow_pa", 5, 2000, "Pressure at no flow [Pa]"),
        Watts = cells.Number("watts", 2, 6000, "Power [W]"),
        Volts = cells.Number("volts", 5, 400, "Supply [V]"),
    };

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new(BestShare * HeadAtNoFlowPa * FlowAtNoHeadM3PerH / 3600 <= BestEfficiency * Watts, "watts", "enough for pressure and "
            + "flow: no fan turns more than seven tenths of its power into moving air"),
    ];
}
