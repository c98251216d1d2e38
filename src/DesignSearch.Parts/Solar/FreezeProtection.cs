using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;

namespace DesignSearch.Parts.Solar;

/// <summary>What keeps water from freezing in the collector.</summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record FreezeProtection(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("freeze-protection", "freeze-protections.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <inheritdoc/>
    public override IEnumerable<RowRule> Rules =>
    [
        new((FluidLPerM2 > 0) == (Method == FreezeMethod.Antifreeze), "fluid_l_per_m2", "more than 0 for antifreeze, 0 for the others"),
        new(Method != FreezeMethod.DrainedByValves || ExchangerEffectiveness == 1, "exchanger_effectiveness", "1 where valves drain"),
        new(Method == FreezeMethod.DrainBack || VesselAboveTankM == 0, "vessel_above_tank_m", "0 where nothing drains back"),
        new(
            VesselAboveTankM == 0 || ExchangerEffectiveness < 1,
            "vessel_above_tank_m",
            "0 without an exchanger: an open tank would empty the vessel"),
    ];

    /// <summary>How it protects.</summary>
    public required FreezeMethod Method { get; init; }

    /// <summary>Share of the heat that its exchanger passes on, 1 without one [0…1], from 0.1 to 1.</summary>
    public required double ExchangerEffectiveness { get; init; }

    /// <summary>Specific heat of the fluid in the collector [J/(kg·K)], from 3000 to 4300.</summary>
    public required double FluidJPerKgK { get; init; }

    /// <summary>Coldest collector against which it protects [°C], from -60 to 0.</summary>
    public required double ProtectsToC { get; init; }

    /// <summary>Antifreeze mixture in its loop per collector area, priced as a small part [L/m²]; 0 without, from 0 to 20.</summary>
    public required double FluidLPerM2 { get; init; }

    /// <summary>Fall that every pipe needs to run empty [%], 0 where it does not matter, from 0 to 10.</summary>
    public required double MinFallPercent { get; init; }

    /// <summary>Smallest bore that still runs empty [mm], 0 where it does not matter, from 0 to 100.</summary>
    public required double MinBoreMm { get; init; }

    /// <summary>Power that it draws while the pump runs [W], from 0 to 200.</summary>
    public required double Watts { get; init; }

    /// <summary>Supply [V], 0 without, from 0 to 400.</summary>
    public required double Volts { get; init; }

    /// <summary>
    /// Highest place of its own vessel above the tank's water, which the collector's water runs back to [m]; 0 where it runs back to
    /// the tank, from 0 to 10.
    /// </summary>
    public required double VesselAboveTankM { get; init; }

    /// <summary>Hottest water or fluid that its valves, vessel or exchanger stand [°C], from 40 to 300.</summary>
    public required double MaxTemperatureC { get; init; }

    /// <inheritdoc/>
    public override double? Bears(Rating rating) => rating == Rating.TemperatureC ? MaxTemperatureC : base.Bears(rating);

    /// <summary>Whether it still protects when the electricity fails.</summary>
    public required bool WorksWithoutPower { get; init; }

    /// <inheritdoc/>
    public override bool RunsOnMains => !ExtraLowVoltage.Includes(Volts, false);

    internal static FreezeProtection Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Set]))
    {
        Method = cells.Word("method", Words.Of<FreezeMethod>(), "How it protects"),
        ExchangerEffectiveness = cells.Number("exchanger_effectiveness", 0.1, 1, "Share of the heat that its exchanger passes on, 1 without one [0…1]"),
        FluidJPerKgK = cells.Number("fluid_j_per_kgk", 3000, 4300, "Specific heat of the fluid in the collector [J/(kg·K)]"),
        ProtectsToC = cells.Number("protects_to_c", -60, 0, "Coldest collector against which it protects [°C]"),
        FluidLPerM2 = cells.Number("fluid_l_per_m2", 0, 20, "Antifreeze mixture in its loop per collector area, priced as a small part [L/m²]; 0 without"),
        MinFallPercent = cells.Number("min_fall_percent", 0, 10, "Fall that every pipe needs to run empty [%], 0 where it does not matter"),
        MinBoreMm = cells.Number("min_bore_mm", 0, 100, "Smallest bore that still runs empty [mm], 0 where it does not matter"),
        Watts = cells.Number("watts", 0, 200, "Power that it draws while the pump runs [W]"),
        Volts = cells.Number("volts", 0, 400, "Supply [V], 0 without"),
        VesselAboveTankM = cells.Number(
            "vessel_above_tank_m", 0, 10, "Highest place of its own vessel above the tank's water [m]; 0 where all runs back to the tank"),
        MaxTemperatureC = cells.Number(
            "max_temperature_c", 40, 300, "Hottest water or fluid that its valves, vessel or exchanger stand [°C]"),
        WorksWithoutPower = cells.YesNo("works_without_power", "Whether it still protects when the electricity fails"),
    };
}
