using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Parts.Piping;

/// <summary>A pump for water, with a curve that falls as the square of the flow.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Pump(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("pump", "pumps.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Head against a shut valve [m], from 0.2 to 60.</summary>
    public required double HeadAtNoFlowM { get; init; }

    /// <summary>Flow against no head [L/min], from 0.5 to 300.</summary>
    public required double FlowAtNoHeadLPerMin { get; init; }

    /// <summary>Power while it runs [W], from 1 to 1500.</summary>
    public required double Watts { get; init; }

    /// <summary>Supply [V], from 5 to 400.</summary>
    public required double Volts { get; init; }

    /// <summary>Hottest water that it stands [°C], from 30 to 150.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <summary>Whether grit stops it, so that it needs a strainer before it.</summary>
    public required bool NeedsStrainer { get; init; }

    /// <summary>
    /// Head of water and air over its inlet, above that at which the water boils there, that it needs to run without cavities [m],
    /// from 0 to 10.
    /// </summary>
    public required double InletHeadM { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TemperatureC ? MaxTemperatureC : base.Bears(rating);

    /// <inheritdoc/>
    public override bool RunsOnMains => !ExtraLowVoltage.Includes(Volts, false);

    internal static Pump Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        HeadAtNoFlowM = cells.Number("head_at_no_flow_m", 0.2, 60, "Head against a shut valve [m]"),
        FlowAtNoHeadLPerMin = cells.Number("flow_at_no_head_l_per_min", 0.5, 300, "Flow against no head [L/min]"),
        Watts = cells.Number("watts", 1, 1500, "Power while it runs [W]"),
        Volts = cells.Number("volts", 5, 400, "Supply [V]"),
        MaxTemperatureC = cells.Number("max_temperature_c", 30, 150, "Hottest water that it stands [°C]"),
        NeedsStrainer = cells.YesNo("needs_strainer", "Whether grit stops it, so that it needs a strainer before it"),
        InletHeadM = cells.Number(
            "inlet_head_m", 0, 10, "Head over its inlet, above that at which water boils there, that it needs to run without cavities [m]"),
    };
}
