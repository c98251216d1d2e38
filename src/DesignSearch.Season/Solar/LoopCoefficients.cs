using DesignSearch.Physics;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Season.Solar;

/// <summary>Tank, collector and pipes as stores and conductances [J/K, W/K].</summary>
/// <remarks>Names and equations in docs/model.md, "Collector, pipes, tank".</remarks>
internal readonly record struct LoopCoefficients()
{
    public const int Layers = 4;


    // So little heat that it shows nowhere, yet no pivot is zero.
    private const double LeastStore = 1e-3;

    public bool HasTank { get; init; }

    public bool HasCollector { get; init; }

    public double LayerStore { get; init; } = 1;

    public double LayerLoss { get; init; }

    public double CollectorStore { get; init; } = 1;

    public double AreaM2 { get; init; }

    public double Eta0 { get; init; }

    public double B0 { get; init; }

    public double Diffuse { get; init; }

    public double Loss1 { get; init; }

    public double Loss2 { get; init; }

    public double LossPerWind { get; init; }

    public double OutStore { get; init; } = LeastStore;

    public double BackStore { get; init; } = LeastStore;

    public double OutLoss { get; init; }

    public double BackLoss { get; init; }

    public double Flow { get; init; } = LeastStore;

    public double Exchanger { get; init; } = 1;

    public double ReleaseFlow { get; init; }

    public double CeilingC { get; init; }

    public double HoldK { get; init; }

    public double PumpW { get; init; }

    public static LoopCoefficients From(LayoutCase layout, SeasonAssumptions a)
    {
        var (tank, collector, pipes, release) = (layout.Installation.Tank, layout.Installation.Collector, layout.Installation.PipeRun, layout.Installation.Release);
        if (!(tank.WaterKg > 0))
            return new LoopCoefficients();
        var still = new LoopCoefficients
        {
            HasTank = true,
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
            HasCollector = true,
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
            PumpW = collector.PumpW,
        };
    }
}
