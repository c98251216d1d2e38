namespace DesignSearch.Runs.Simulate;

/// <summary>Figures of one of many layouts under one weather, weighted over its winters as in the ranking.</summary>
public sealed record SimulatedLayout
{
    /// <summary>Which of the layouts.</summary>
    public required string Name { get; init; }

    /// <summary>The weather file; empty for the scenario's own winters.</summary>
    public required string Weather { get; init; }

    /// <summary>Whether no winter has a frost hour and every check passes.</summary>
    public required bool Holds { get; init; }

    /// <summary>Ids of the checks that fail.</summary>
    public required IReadOnlyList<string> Fails { get; init; }

    /// <summary>What is bought.</summary>
    public required decimal BuildPrice { get; init; }

    /// <summary>Build price and present value of the years of use.</summary>
    public required decimal LifeCost { get; init; }

    /// <summary>Frost-free hours gained over the bare house per unit of life cost.</summary>
    public required double Score { get; init; }

    /// <summary>Frost hours.</summary>
    public required double FrostHours { get; init; }

    /// <summary>Frost hours of the worst winter.</summary>
    public required int WorstFrostHours { get; init; }

    /// <summary>Frost degree-hours [K·h].</summary>
    public required double FrostDegreeHoursKh { get; init; }

    /// <summary>Lowest hour mean of all winters [°C].</summary>
    public required double LowestAirC { get; init; }

    /// <summary>Electric heat of a winter [kWh].</summary>
    public required double StandbyKwh { get; init; }

    /// <summary>All electricity of a winter, drives included [kWh].</summary>
    public required double ElectricKwh { get; init; }

    /// <summary>Heat from the collector into the tank [kWh].</summary>
    public required double CollectorYieldKwh { get; init; }

    /// <summary>Hours that its pump runs.</summary>
    public required double PumpHours { get; init; }
}
