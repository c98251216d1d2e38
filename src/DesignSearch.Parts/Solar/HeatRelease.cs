using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Parts.Solar;

/// <summary>What brings heat from the tank into the house.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record HeatRelease(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("release", "releases.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new((FanWatts > 0) == (Form == ReleaseForm.FanCoil), "fan_watts", "more than 0 for a fan-coil, 0 for the others"),
        new((Unit == PartUnit.Metre) == (Form == ReleaseForm.BarePipe), "unit", "m for a bare-pipe, piece for the others"),
    ];

    /// <summary>What it is.</summary>
    public required ReleaseForm Form { get; init; }

    /// <summary>Heat to the air per unit and kelvin between water and air, at the flow given [W/K], from 0.1 to 2000.</summary>
    public required double WPerK { get; init; }

    /// <summary>Flow for which that holds [L/min], from 0.1 to 100.</summary>
    public required double FlowLPerMin { get; init; }

    /// <summary>Pressure drop per unit at that flow [kPa], from 0 to 100.</summary>
    public required double DropKPaAtFlow { get; init; }

    /// <summary>Power of its fan while it runs [W], 0 without one, from 0 to 500.</summary>
    public required double FanWatts { get; init; }

    /// <summary>Supply of the fan [V], 0 without one, from 0 to 400.</summary>
    public required double Volts { get; init; }

    /// <summary>Hottest water that it stands [°C], from 30 to 150.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <summary>Share of its heat that it radiates, not given to the air, from 0 to 1; 0 where nothing is said.</summary>
    public required double RadiantShare { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TemperatureC ? MaxTemperatureC : base.Bears(rating);

    /// <inheritdoc/>
    public override bool RunsOnMains => !ExtraLowVoltage.Includes(Volts, false);

    internal static HeatRelease Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece, PartUnit.Metre]))
    {
        Form = cells.Word("form", Words.Of<ReleaseForm>(), "What it is"),
        WPerK = cells.Number("w_per_k", 0.1, 2000, "Heat to the air per unit and kelvin between water and air, at the flow given [W/K]"),
        FlowLPerMin = cells.Number("flow_l_per_min", 0.1, 100, "Flow for which that holds [L/min]"),
        DropKPaAtFlow = cells.Number("drop_kpa_at_flow", 0, 100, "Pressure drop per unit at that flow [kPa]"),
        FanWatts = cells.Number("fan_watts", 0, 500, "Power of its fan while it runs [W], 0 without one"),
        Volts = cells.Number("volts", 0, 400, "Supply of the fan [V], 0 without one"),
        RadiantShare = cells.NumberIfAny("radiant_share", 0, 1, "Share of its heat that it radiates, 0 for a fan coil") ?? 0,
        MaxTemperatureC = cells.Number("max_temperature_c", 30, 150, "Hottest water that it stands [°C]"),
    };
}
