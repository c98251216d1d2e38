using System.Runtime.CompilerServices;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using C = DesignSearch.Season.Solar.LoopCoefficients;

namespace DesignSearch.Season.Solar;

/// <summary>Collector, pipes and a tank of four layers of some layouts: one implicit step, upwind, solved in closed form.</summary>
/// <remarks>Equations in docs/model.md, "Collector, pipes, tank". Only lanes as fields, so that every one stays aligned.</remarks>
internal struct LoopBlock<T>
    where T : unmanaged, ILane<T>
{
    public T Collector, OutPipe, BackPipe, T1, T2, T3, T4;

    /// <summary>Top layer as it will be half-way through the next step, carried on from this one [°C]; the release goes by it.</summary>
    public T TopAhead;

    /// <summary>Heat the tank gives to the air in this step [W]; share of the step that the pump ran; sun on the plane [W/m²].</summary>
    public T TankLoss, Pump, Light;

    /// <summary>Sums over the steps of the hour [W].</summary>
    public T SumAbsorbed, SumCollectorLoss, SumPipeLoss, SumTankLoss, SumToTank, SumPump;

    private readonly T layerStore, layerLoss, collectorStore, area, eta0, b0, diffuseShare, loss1, loss2, lossPerWind;
    private readonly T outStore, backStore, outLoss, backLoss, flowMost, exchanger, pass, releaseFlow, pumpW;
    private readonly PumpControl<T> control;

    private T outside, windLoss, absorbed, allowed, loss;
    private T r1, r2, r3, r4, flow, outA, outB, collectorA, collectorB, backA, backB, halfLoss, topBefore;

    public LoopBlock(ReadOnlySpan<C> c, double step, double airC, SeasonAssumptions assumptions)
    {
        var perStep = T.Of(1 / step);
        layerStore = Pack.Of<T, C>(c, x => x.LayerStore) * perStep;
        layerLoss = Pack.Of<T, C>(c, x => x.LayerLoss);
        collectorStore = Pack.Of<T, C>(c, x => x.CollectorStore) * perStep;
        area = Pack.Of<T, C>(c, x => x.AreaM2);
        eta0 = Pack.Of<T, C>(c, x => x.Eta0);
        b0 = Pack.Of<T, C>(c, x => x.B0);
        diffuseShare = Pack.Of<T, C>(c, x => x.Diffuse);
        loss1 = Pack.Of<T, C>(c, x => x.Loss1);
        loss2 = Pack.Of<T, C>(c, x => x.Loss2);
        lossPerWind = Pack.Of<T, C>(c, x => x.LossPerWind);
        outStore = Pack.Of<T, C>(c, x => x.OutStore) * perStep;
        backStore = Pack.Of<T, C>(c, x => x.BackStore) * perStep;
        outLoss = Pack.Of<T, C>(c, x => x.OutLoss);
        backLoss = Pack.Of<T, C>(c, x => x.BackLoss);
        flowMost = Pack.Of<T, C>(c, x => x.Flow);
        exchanger = Pack.Of<T, C>(c, x => x.Exchanger);
        pass = T.Of(1) - exchanger;
        releaseFlow = Pack.Of<T, C>(c, x => x.ReleaseFlow);
        pumpW = Pack.Of<T, C>(c, x => x.PumpW);
        control = new PumpControl<T>(Pack.Of<T, C>(c, x => x.HoldK), Pack.Of<T, C>(c, x => x.CeilingC), assumptions);
        Collector = OutPipe = BackPipe = T.Of(airC);
        T1 = T2 = T3 = T4 = TopAhead = topBefore = T.Of(Math.Max(8, airC));
    }

    /// <summary>Heat in tank, collector and pipes, divided by the step, against 0 °C [W].</summary>
    public readonly T Stored => layerStore * (T1 + T2 + T3 + T4) + collectorStore * Collector + outStore * OutPipe + backStore * BackPipe;

    public readonly T TankMean => (T1 + T2 + T3 + T4) * T.Of(0.25);

    /// <summary>Takes one hour's weather and sun, and empties the hour's sums.</summary>
    public void Hour(in HourForcing f, in T beam, in T diffuse, in T cosIncidence)
    {
        outside = T.Of(f.OutsideC);
        windLoss = lossPerWind * T.Of(f.RoofWindMPerS);
        var modifier = CollectorEfficiency.BeamModifier(b0, cosIncidence);
        absorbed = CollectorEfficiency.AbsorbedW(area, eta0, modifier, beam, diffuseShare, diffuse);
        Light = beam + diffuse;
        allowed = control.Allowed(Light, f.Power);
        SumAbsorbed = SumCollectorLoss = SumPipeLoss = SumTankLoss = SumToTank = SumPump = T.Of(0);
    }

    /// <summary>Takes the tank's loss at the temperatures now; the same heat warms the house and leaves the layers.</summary>
    public void StandingLoss(in T airC)
    {
        var (a, b, c, d, air) = (T1, T2, T3, T4, airC);
        var (l1, l2, l3, l4) = (layerLoss * (a - air), layerLoss * (b - air), layerLoss * (c - air), layerLoss * (d - air));
        var lost = l1 + l2 + l3 + l4;
        TankLoss = lost;
        SumTankLoss += lost;
        r1 = layerStore * a - l1;
        r2 = layerStore * b - l2;
        r3 = layerStore * c - l3;
        r4 = layerStore * d - l4;
    }

    /// <summary>The water's way from the tank's bottom through pipe, collector and pipe as a line in the bottom's temperature.</summary>
    public void Circulate()
    {
        var (one, half) = (T.Of(1), T.Of(0.5));
        var (collector, back, air) = (Collector, BackPipe, outside);
        var middle = collector - half * Pump * (collector - back) - air;
        var lost = CollectorEfficiency.LossWPerK(loss1, loss2, middle, windLoss);
        var held = collectorStore * collector + absorbed + lost * air;
        var pump = control.Duty(allowed, held, collectorStore + lost, flowMost, back, T4, T1);
        var water = flowMost * pump;

        // While water flows the loss is that of the mean of inlet and outlet.
        var halfLost = lost * half * pump;
        var inverseBack = one / (backStore + water + backLoss);
        var inverseCollector = one / (collectorStore + water + lost - halfLost);
        var inverseOut = one / (outStore + water + outLoss);
        var coldBack = (backStore * back + backLoss * air) * inverseBack;
        var flowBack = water * inverseBack;
        var slope = (water - halfLost) * inverseCollector;
        var still = held * inverseCollector;
        var forward = water * inverseOut;
        var a = (outStore * OutPipe + outLoss * air) * inverseOut + forward * (still + slope * coldBack);
        var b = forward * slope * flowBack;
        var closed = one / (one - b * pass);
        outA = a * closed;
        outB = b * exchanger * closed;
        (loss, Pump, flow, halfLoss, backA, backB, collectorA, collectorB) = (lost, pump, water, halfLost, coldBack, flowBack, still, slope);
        SumPump += pump;
    }

    /// <summary>Solves the tank, then the loop backwards.</summary>
    /// <param name="releaseW">Heat released in this step [W].</param>
    /// <param name="releaseShare">Share of the step that the release ran.</param>
    public void Settle(in T releaseW, in T releaseShare)
    {
        var (zero, water, air) = (T.Of(0), flow, outside);
        var draw = releaseFlow * releaseShare;
        var (down, up) = (T.Max(water - draw, zero), T.Max(draw - water, zero));

        // Either down or up is zero, so the inner layers hang on the top or on the bottom alone.
        var inner = T.Of(1) / (layerStore + down + up);
        var (fall, rise) = (down * inner, up * inner);
        var (q2, q3) = (r2 * inner, r3 * inner);
        var inlet4 = pass + exchanger * outB;
        var p1 = layerStore + draw + down;
        var p4 = layerStore + water + up;
        var x = water * inlet4 + up * rise * rise;
        var y = draw + down * fall * fall;
        var s1 = r1 + water * exchanger * outA + up * (q2 + rise * q3);
        var s4 = r4 - releaseW + down * (q3 + fall * q2);
        var inverse = T.Of(1) / (p1 * p4 - x * y);
        var top = (s1 * p4 + x * s4) * inverse;
        var bottom = (p1 * s4 + y * s1) * inverse;
        T1 = top;
        T2 = q2 + rise * q3 + fall * top + rise * rise * bottom;
        T3 = q3 + fall * q2 + fall * fall * top + rise * bottom;
        T4 = bottom;

        var outgoing = outA + outB * bottom;
        var back = backA + backB * (pass * outgoing + exchanger * bottom);
        var collector = collectorA + collectorB * back;
        (OutPipe, BackPipe, Collector) = (outgoing, back, collector);
        SumToTank += water * exchanger * (outgoing - bottom);
        SumAbsorbed += absorbed;
        SumCollectorLoss += loss * (collector - air) - halfLoss * (collector - back);
        SumPipeLoss += outLoss * (outgoing - air) + backLoss * (back - air);
    }

    /// <summary>Warm water below cold rises: neighbours that stand upside down become their mean; heat is kept.</summary>
    public void Mix()
    {
        var (a, b, c, d) = (T1, T2, T3, T4);
        Pair(ref a, ref b);
        Pair(ref b, ref c);
        Pair(ref c, ref d);
        Pair(ref a, ref b);
        Pair(ref b, ref c);
        Pair(ref a, ref b);
        TopAhead = a + T.Of(0.5) * (a - topBefore);
        (T1, T2, T3, T4, topBefore) = (a, b, c, d, a);
    }

    /// <summary>Books the hour.</summary>
    public readonly void Book(ref FlowBook<T> book)
    {
        book.Heat(SolarFlows.Sun, SumAbsorbed);
        book.Heat(SolarFlows.CollectorLoss, SumCollectorLoss);
        book.Heat(SolarFlows.PipeLoss, SumPipeLoss);
        book.Heat(SolarFlows.TankLoss, SumTankLoss);
        book.Electricity(SolarFlows.Pump, SumPump * pumpW);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Pair(ref T upper, ref T lower)
    {
        var mean = (upper + lower) * T.Of(0.5);
        upper = T.Max(upper, mean);
        lower = T.Min(lower, mean);
    }
}
