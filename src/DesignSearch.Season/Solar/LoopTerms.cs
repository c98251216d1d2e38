using DesignSearch.Physics;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Season.Solar;

/// <summary>Tank, collector and pipes as stores and conductances. Every field is of the same type: one layout's number, or a lane of them.</summary>
/// <remarks>Equations in docs/model.md, "Collector, pipes, tank". The one description of these numbers, as <see cref="House.HouseTerms{TNumber}"/> is of the house's.</remarks>
internal struct LoopTerms<TNumber>
    where TNumber : unmanaged
{
    /// <summary>Heat capacity of one layer of the tank [J/K].</summary>
    public TNumber LayerStore;

    /// <summary>One layer to the air of the house [W/K].</summary>
    public TNumber LayerLoss;

    /// <summary>Heat capacity of the collector, p [J/K].</summary>
    public TNumber CollectorStore;

    /// <summary>a₁ times the area [W/K].</summary>
    public TNumber Loss1;

    /// <summary>a₂ times the area [W/K²].</summary>
    public TNumber Loss2;

    /// <summary>Heat capacity of the warm pipe, o [J/K].</summary>
    public TNumber OutStore;

    /// <summary>Heat capacity of the cool pipe, r [J/K].</summary>
    public TNumber BackStore;

    /// <summary>Warm pipe to the air outside [W/K].</summary>
    public TNumber OutLoss;

    /// <summary>Cool pipe to the air outside [W/K].</summary>
    public TNumber BackLoss;

    /// <summary>Heat that the collector's water carries while the pump runs [W/K].</summary>
    public TNumber Flow;

    /// <summary>Share of the heat that an exchanger passes on, 1 without one [0…1].</summary>
    public TNumber Exchanger;

    /// <summary>Heat that the release's water carries while it runs [W/K].</summary>
    public TNumber ReleaseFlow;

    /// <summary>Gross area of the collectors; 0 without any [m²].</summary>
    public TNumber AreaM2;

    /// <summary>η₀, peak efficiency for beam [0…1].</summary>
    public TNumber Eta0;

    /// <summary>b₀ of the incidence modifier [1].</summary>
    public TNumber B0;

    /// <summary>K_d, modifier for diffuse light [0…1].</summary>
    public TNumber Diffuse;

    /// <summary>a₃ times the area [W/K per m/s].</summary>
    public TNumber LossPerWind;

    /// <summary>Tank's top at which the pump rests [°C].</summary>
    public TNumber CeilingC;

    /// <summary>Collector above the tank's bottom that the pump holds [K].</summary>
    public TNumber HoldK;

    /// <summary>Collector above which the pump is not started [°C].</summary>
    public TNumber LockOutC;

    /// <summary>Electricity of the collector's pump while it runs [W].</summary>
    public TNumber PumpW;
}

/// <summary>Makes the terms of a solar loop from its numbers.</summary>
internal static class LoopTerms
{
    private const int Layers = 4;

    // So little heat that it shows nowhere, yet no pivot is zero.
    private const double LeastStore = 1e-3;

    /// <summary>Neither tank nor collector, yet no pivot is zero.</summary>
    public static LoopTerms<double> None { get; } = new()
    {
        LayerStore = 1,
        CollectorStore = 1,
        OutStore = LeastStore,
        BackStore = LeastStore,
        Flow = LeastStore,
        Exchanger = 1,
        LockOutC = CollectorNumbers.NoLockOutC,
    };

    /// <summary>The terms of a layout; without area, flow, plane or tank those of no collector, to the last bit.</summary>
    public static LoopTerms<double> From(LayoutCase layout, SeasonAssumptions a)
    {
        var (tank, collector, pipes, release) = (layout.Installation.Tank, layout.Installation.Collector, layout.Installation.PipeRun, layout.Installation.Release);
        if (!(tank.WaterKg > 0))
            return None;
        var still = None with
        {
            LayerStore = tank.WaterKg * Water.HeatJPerKgK / Layers,
            LayerLoss = tank.LossWPerK / Layers,
            ReleaseFlow = release.FlowKgPerS * Water.HeatJPerKgK,
            CeilingC = tank.CeilingC,
        };
        if (layout.Plane is null || !(collector.AreaM2 > 0 && collector.FlowKgPerS > 0))
            return still;
        var area = collector.AreaM2;
        // Drained, only metal and wall stay outside; the fluid and its heat belong to the tank.
        var kept = collector.EmptyAtRest ? a.EmptyCapacityShare : 1;
        return still with
        {
            CollectorStore = Math.Max(LeastStore, collector.CapacityJPerM2K * area * kept),
            AreaM2 = area,
            Eta0 = collector.Eta0Beam,
            B0 = collector.IncidenceB0,
            Diffuse = collector.DiffuseModifier,
            Loss1 = collector.A1WPerM2K * area,
            Loss2 = collector.A2WPerM2K2 * area,
            LossPerWind = collector.WindLossJPerM3K * area,
            OutStore = Math.Max(LeastStore, pipes.OutCapacityJPerK * kept),
            BackStore = Math.Max(LeastStore, pipes.BackCapacityJPerK * kept),
            OutLoss = pipes.OutLossWPerK,
            BackLoss = pipes.BackLossWPerK,
            Flow = collector.FlowKgPerS * collector.FluidJPerKgK,
            Exchanger = collector.ExchangerEffectiveness,
            HoldK = PumpAssumptions.HoldK(collector.StopDifferenceK, collector.StartDifferenceK, a),
            LockOutC = collector.LockOutC,
            PumpW = collector.PumpW,
        };
    }

    /// <summary>The same loop with its stores over a step: what a step of that length keeps of each, [W/K] instead of [J/K].</summary>
    /// <param name="loop">The loop.</param>
    /// <param name="stepSeconds">The step [s].</param>
    public static LoopTerms<double> Over(LoopTerms<double> loop, double stepSeconds)
    {
        var perStep = 1 / stepSeconds;
        loop.LayerStore *= perStep;
        loop.CollectorStore *= perStep;
        loop.OutStore *= perStep;
        loop.BackStore *= perStep;
        return loop;
    }
}
