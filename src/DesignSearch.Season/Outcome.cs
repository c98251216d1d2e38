using DesignSearch.Season.Flows;
using DesignSearch.Season.Solar;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season;

/// <summary>What one winter did to one layout; the warm-up is not counted anywhere in it.</summary>
public sealed record Outcome
{
    /// <summary>Hours that count.</summary>
    public required int SeasonHours { get; init; }

    /// <summary>Hours in which the mean of the plants' air lies below the frost limit: the house's, or that of a source that holds them.</summary>
    public required int FrostHours { get; init; }

    /// <summary>Sum of the shortfall of those hour means [K·h].</summary>
    public required double FrostDegreeHoursKh { get; init; }

    /// <summary>Lowest hour mean of the plants' air [°C].</summary>
    public required double LowestAirC { get; init; }

    /// <summary>Lowest hour mean of the house's own air [°C]; lower than <see cref="LowestAirC"/> where only the plants are held.</summary>
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

    /// <summary>Heat that reached the tank from the collector, after both pipes [kWh].</summary>
    public required double CollectorYieldKwh { get; init; }

    /// <summary>Hours the collector's pump ran.</summary>
    public required double PumpHours { get; init; }

    /// <summary>Hours the release ran, as full-load hours.</summary>
    public required double ReleaseHours { get; init; }

    /// <summary>Lowest and highest temperature in the tank [°C]; NaN without a tank.</summary>
    public required double TankLowestC { get; init; }

    /// <inheritdoc cref="TankLowestC"/>
    public required double TankHighestC { get; init; }

    /// <summary>Mean temperature of the tank [°C]; NaN without a tank.</summary>
    public required double TankMeanC { get; init; }

    /// <summary>Every flow of heat, every use of electricity and every store over the season.</summary>
    public required EnergyBooks Books { get; init; }

    /// <summary>What the layout's sources work out of themselves, source by source.</summary>
    public IReadOnlyList<FigureValue> Figures
    {
        get;
        init => field = ValueList<FigureValue>.Of(value);
    }
        = ValueList<FigureValue>.Empty;

    /// <summary>All electricity [kWh].</summary>
    public double ElectricKwh => Books.ElectricKwh;

    /// <summary>The part of it that is bought to heat [kWh].</summary>
    public double StandbyKwh => Books.ElectricHeatKwh;

    /// <summary>The part of it that pumps, fans and the like take [kWh].</summary>
    public double PumpKwh => Books.AuxiliaryKwh;

    /// <summary>The part of <see cref="ElectricKwh"/> that falls into the hours of the cheap tariff [kWh]; 0 where there is none.</summary>
    public double CheapKwh => Books.CheapKwh;

    /// <summary>Heat released from tank to house by pipe or fan coil [kWh].</summary>
    public double ReleasedKwh => Books.Of(SolarFlows.Release);

    /// <summary>What the books do not account for, as a share of all heat that entered.</summary>
    public double BalanceResidual => Books.Residual;

    /// <summary>A figure of a source; NaN where the layout has no such source.</summary>
    /// <param name="figure">The figure.</param>
    public double Of(Figure figure)
    {
        foreach (var (known, value) in Figures)
        {
            if (known.Id == figure.Id)
                return value;
        }

        return double.NaN;
    }
}
