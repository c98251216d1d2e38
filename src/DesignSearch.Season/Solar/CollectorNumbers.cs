using DesignSearch.Physics;

namespace DesignSearch.Season.Solar;

/// <summary>A solar collector in the form of ISO 9806, with its pump and its control.</summary>
public sealed record CollectorNumbers
{
    /// <summary>Gross area of all collectors [m²]; 0 without any.</summary>
    public required double AreaM2 { get; init; }

    /// <summary>Peak efficiency for beam [0…1].</summary>
    public double Eta0Beam { get; init; }

    /// <summary>Loss term [W/(m²K)].</summary>
    public double A1WPerM2K { get; init; }

    /// <summary>Loss term, quadratic [W/(m²K²)].</summary>
    public double A2WPerM2K2 { get; init; }

    /// <summary>Loss that grows with wind, unglazed collectors [W/(m²K) per m/s].</summary>
    public double WindLossJPerM3K { get; init; }

    /// <summary>Incidence modifier for beam: K = 1 − b0 (1/cos θ − 1).</summary>
    public double IncidenceB0 { get; init; }

    /// <summary>Incidence modifier for diffuse light [0…1].</summary>
    public double DiffuseModifier { get; init; } = 0.9;

    /// <summary>Heat capacity with its fluid [J/(m²K)].</summary>
    public double CapacityJPerM2K { get; init; }

    /// <summary>Mass flow of all collectors while the pump runs [kg/s].</summary>
    public double FlowKgPerS { get; init; }

    /// <summary>Specific heat of the fluid [J/(kg·K)].</summary>
    public double FluidJPerKgK { get; init; } = Water.HeatJPerKgK;

    /// <summary>Share of the heat that an exchanger between collector and tank passes on, 1 without one [0…1].</summary>
    public double ExchangerEffectiveness { get; init; } = 1;

    /// <summary>True when collector and outdoor pipe stand empty while the pump rests (drained or drain-back).</summary>
    public bool EmptyAtRest { get; init; }

    /// <summary>Electric power of the pump while it runs [W].</summary>
    public double PumpW { get; init; }

    /// <summary>The pump starts when collector minus tank bottom exceeds this [K].</summary>
    public double StartDifferenceK { get; init; } = 8;

    /// <summary>The pump stops when collector minus tank bottom falls below this [K].</summary>
    public double StopDifferenceK { get; init; } = 3;

    /// <summary>The pump is not started while the collector is hotter than this [°C].</summary>
    public double LockOutC { get; init; } = NoLockOutC;

    /// <summary>Hotter than any collector becomes [°C].</summary>
    public const double NoLockOutC = 1000;

    /// <summary>No collector.</summary>
    public static CollectorNumbers None { get; } = new() { AreaM2 = 0 };
}
