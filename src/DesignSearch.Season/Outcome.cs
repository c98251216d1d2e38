namespace DesignSearch.Season;

/// <summary>What one winter did to one layout; the warm-up is not counted anywhere in it.</summary>
public sealed record Outcome
{
    /// <summary>Hours that count.</summary>
    public required int SeasonHours { get; init; }

    /// <summary>Hours in which the mean of the plants' air lies below the frost limit: the air under the fleece of a bench where there is one, else the house's.</summary>
    public required int FrostHours { get; init; }

    /// <summary>Sum of the shortfall of those hour means [K·h].</summary>
    public required double FrostDegreeHoursKh { get; init; }

    /// <summary>Lowest hour mean of the plants' air [°C].</summary>
    public required double LowestAirC { get; init; }

    /// <summary>Lowest hour mean of the house's own air [°C]; lower than <see cref="LowestAirC"/> where only a bench is held.</summary>
    public double LowestHouseAirC { get; init; } = double.NaN;

    /// <summary>Lowest of the plants' air at the end of any step [°C].</summary>
    public required double LowestWithinHourC { get; init; }

    /// <summary>Hour of the winter (warm-up counted) with the lowest hour mean of the plants' air.</summary>
    public required int ColdestHour { get; init; }

    /// <summary>Hours without mains; pump, fan and heater are dead in them.</summary>
    public int PowerCutHours { get; init; }

    /// <summary>Frost hours among <see cref="PowerCutHours"/>.</summary>
    public int PowerCutFrostHours { get; init; }

    /// <summary>Lowest hour mean of the plants' air in <see cref="PowerCutHours"/> [°C]; NaN without a power cut.</summary>
    public double PowerCutLowestAirC { get; init; } = double.NaN;

    /// <summary>Electric heat: stand-by heater and heated bench [kWh].</summary>
    public required double StandbyKwh { get; init; }

    /// <summary>The bench's part of <see cref="StandbyKwh"/> [kWh].</summary>
    public double BenchKwh { get; init; }

    /// <summary>Heat that reached the tank from the collector, after both pipes [kWh].</summary>
    public required double CollectorYieldKwh { get; init; }

    /// <summary>Hours the collector's pump ran.</summary>
    public required double PumpHours { get; init; }

    /// <summary>Electricity of pumps and fans [kWh].</summary>
    public required double PumpKwh { get; init; }

    /// <summary>The part of <see cref="StandbyKwh"/> and <see cref="PumpKwh"/> that falls into the hours of the cheap tariff [kWh]; 0 where there is none.</summary>
    public double CheapKwh { get; init; }

    /// <summary>Heat brought from the compost heap into the house [kWh].</summary>
    public double CompostKwh { get; init; }

    /// <summary>Hours the compost heap's pump ran, as full-load hours.</summary>
    public double CompostPumpHours { get; init; }

    /// <summary>Lowest core of the compost heap at the end of an hour [°C]; NaN without one.</summary>
    public double CompostLowestC { get; init; } = double.NaN;

    /// <summary>Share of the biodegradable solids left at the end [0…1]; NaN without a heap.</summary>
    public double CompostSolidsLeft { get; init; } = double.NaN;

    /// <summary>Heat released from tank to house by pipe or fan coil [kWh].</summary>
    public required double ReleasedKwh { get; init; }

    /// <summary>Hours the release ran, as full-load hours.</summary>
    public required double ReleaseHours { get; init; }

    /// <summary>Lowest and highest temperature in the tank [°C]; NaN without a tank.</summary>
    public required double TankLowestC { get; init; }

    /// <inheritdoc cref="TankLowestC"/>
    public required double TankHighestC { get; init; }

    /// <summary>Mean temperature of the tank [°C]; NaN without a tank.</summary>
    public required double TankMeanC { get; init; }

    /// <summary>Every flow of heat over the season.</summary>
    public required EnergyLedger Ledger { get; init; }

    /// <summary>What the ledger does not account for, as a share of all heat that entered.</summary>
    public double BalanceResidual => Ledger.Residual;
}
