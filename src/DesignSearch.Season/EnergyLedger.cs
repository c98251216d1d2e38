namespace DesignSearch.Season;

/// <summary>Every flow of heat over one season [kWh]; gains and losses are both written as positive numbers, stores as end minus start.</summary>
public sealed record EnergyLedger
{
    /// <summary>Sun that passed the cover and stayed as heat.</summary>
    public required double SunIntoHouse { get; init; }

    /// <summary>Sun absorbed by the collector.</summary>
    public required double SunIntoCollector { get; init; }

    /// <summary>Stand-by heater.</summary>
    public required double Heater { get; init; }

    /// <summary>Electric heat of a bench.</summary>
    public double Bench { get; init; }

    /// <summary>Stored in a bench; end minus start.</summary>
    public double StoredInBench { get; init; }

    /// <summary>Heat of rotting compost.</summary>
    public double Compost { get; init; }

    /// <summary>Electricity of fans and pumps that ends as heat in house or water.</summary>
    public required double Auxiliary { get; init; }

    /// <summary>Through the cover to the outside air.</summary>
    public required double CoverToAir { get; init; }

    /// <summary>From the cover to the sky.</summary>
    public required double CoverToSky { get; init; }

    /// <summary>With leaking air.</summary>
    public required double Leakage { get; init; }

    /// <summary>Through opened vents.</summary>
    public required double Vents { get; init; }

    /// <summary>Into the ground, edge included; negative when the ground gives.</summary>
    public required double Ground { get; init; }

    /// <summary>Through the solid back wall to the outside.</summary>
    public double Wall { get; init; }

    /// <summary>From the collector to the outside.</summary>
    public required double CollectorLoss { get; init; }

    /// <summary>From both pipes to the outside, what their cooling water lost at night included.</summary>
    public required double PipeLoss { get; init; }

    /// <summary>From the compost heap to the outside, steam included.</summary>
    public double CompostLoss { get; init; }

    /// <summary>Stored in the compost heap; end minus start.</summary>
    public double StoredInCompost { get; init; }

    /// <summary>Stored in the house: air, cover, floor, barrels; end minus start.</summary>
    public required double StoredInHouse { get; init; }

    /// <summary>Stored in tank, collector and pipes; end minus start.</summary>
    public required double StoredInLoop { get; init; }

    /// <summary>All heat that entered: sun, electricity, compost, the ground's gift, release from stores.</summary>
    public required double Throughput { get; init; }

    /// <summary>Unaccounted heat as a share of <see cref="Throughput"/>.</summary>
    public required double Residual { get; init; }
}
