using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Parts.Heaters;

/// <summary>An electric stand-by heater.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record Heater(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("heater", "heaters.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Power [W], from 50 to 20000.</summary>
    public required double Watts { get; init; }

    /// <summary>Supply [V], from 5 to 400.</summary>
    public required double Volts { get; init; }

    /// <summary>Width of the band of its thermostat [K], from 0.1 to 6.</summary>
    public required double BandK { get; init; }

    /// <summary>Whether it needs mains voltage.</summary>
    public required bool NeedsMains { get; init; }

    /// <summary>Whether a thermostat is built in; else one from the small parts is needed.</summary>
    public required bool HasThermostat { get; init; }

    /// <summary>Share of its heat that it radiates, not given to the air, from 0 to 1; 0 where nothing is said.</summary>
    public required double RadiantShare { get; init; }

    /// <inheritdoc/>
    public override bool RunsOnMains => NeedsMains || !ExtraLowVoltage.Includes(Volts, false);

    internal static Heater Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Piece]))
    {
        Watts = cells.Number("watts", 50, 20000, "Power [W]"),
        Volts = cells.Number("volts", 5, 400, "Supply [V]"),
        BandK = cells.Number("band_k", 0.1, 6, "Width of the band of its thermostat [K]"),
        NeedsMains = cells.YesNo("needs_mains", "Whether it needs mains voltage"),
        RadiantShare = cells.NumberIfAny("radiant_share", 0, 1, "Share of its heat that it radiates, 0 for a fan heater") ?? 0,
        HasThermostat = cells.YesNo("has_thermostat", "Whether a thermostat is built in; else one from the small parts is needed"),
    };
}
