using System.Runtime.CompilerServices;
using C = DesignSearch.Season.LoopCoefficients;

namespace DesignSearch.Season;

/// <summary>Collector, pipes and a tank of four layers of some layouts: one implicit step, upwind, solved in closed form. Equations in docs/model.md, "Loop".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct LoopBlock<T>
    where T : unmanaged, ILane<T>
{
    private const double CeilingFadeK = 2;

    public T Collector, OutPipe, BackPipe, T1, T2, T3, T4;

    /// <summary>Top layer as it will be half-way through the next step, carried on from this one [°C]; the release goes by it.</summary>
    public T TopAhead;

    /// <summary>Heat the tank gives to the air in this step [W]; share of the step that the pump ran; sun on the plane [W/m²].</summary>
    public T TankLoss, Pump, Light;

    /// <summary>Sums over the steps of the hour [W].</summary>
    public T SumAbsorbed, SumCollectorLoss, SumPipeLoss, SumToTank, SumPump;

    private readonly T layerStore, layerLoss, collectorStore, area, eta0, b0, diffuseShare, loss1, loss2, lossPerWind;
    private readonly T outStore, backStore, outLoss, backLoss, flowMost, exchanger, pass, releaseFlow, ceiling, hold, inverseGate, gateLight;

    private T outside, windLoss, absorbed, gateNow, loss;
    private T r1, r2, r3, r4, flow, outA, outB, collectorA, collectorB, backA, backB, halfLoss, topBefore;

    public LoopBlock(ReadOnlySpan<C> c, double step, double airC, double lightWPerM2)
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
        ceiling = Pack.Of<T, C>(c, x => x.CeilingC);
        hold = Pack.Of<T, C>(c, x => x.HoldK);
        (gateLight, inverseGate) = (T.Of(lightWPerM2), T.Of(1 / Math.Max(lightWPerM2, 1e-3)));
        Collector = OutPipe = BackPipe = T.Of(airC);
        T1 = T2 = T3 = T4 = TopAhead = topBefore = T.Of(Math.Max(8, airC));
    }

    /// <summary>Heat in tank, collector and pipes, divided by the step, against 0 °C [W].</summary>
    public readonly T Stored => layerStore * (T1 + T2 + T3 + T4) + collectorStore * Collector + outStore * OutPipe + backStore * BackPipe;

    public readonly T TankMean => (T1 + T2 + T3 + T4) * T.Of(0.25);

    /// <summary>Takes one hour's weather and sun, and empties the hour's sums.</summary>
    public void Hour(in HourForcing f, in T beam, in T diffuse, in T cosIncidence)
    {
        var (one, zero) = (T.Of(1), T.Of(0));
        outside = T.Of(f.OutsideC);
        windLoss = lossPerWind * T.Of(f.RoofWindMPerS);
        var modifier = T.Max(one - b0 * (one / T.Max(cosIncidence, T.Of(1e-3)) - one), zero);
        modifier = T.IfGreater(cosIncidence, zero, modifier, zero);
        absorbed = area * eta0 * (beam * modifier + diffuseShare * diffuse);
        Light = beam + diffuse;
        gateNow = T.Of(f.Power) * T.Min(T.Max((Light - gateLight) * inverseGate, zero), one);
        SumAbsorbed = SumCollectorLoss = SumPipeLoss = SumToTank = SumPump = zero;
    }

    /// <summary>Takes the tank's loss at the temperatures now; the same heat warms the house and leaves the layers.</summary>
    public void Lose(in T airC)
    {
        var (l1, l2, l3, l4) = (layerLoss * (T1 - airC), layerLoss * (T2 - airC), layerLoss * (T3 - airC), layerLoss * (T4 - airC));
        TankLoss = l1 + l2 + l3 + l4;
        r1 = layerStore * T1 - l1;
        r2 = layerStore * T2 - l2;
        r3 = layerStore * T3 - l3;
        r4 = layerStore * T4 - l4;
    }

    /// <summary>Pump, and the water's way from the tank's bottom through return pipe, collector and outgoing pipe as a line in the bottom's temperature.</summary>
    public void Circulate()
    {
        var (one, zero, half) = (T.Of(1), T.Of(0), T.Of(0.5));
        var middle = Collector - half * Pump * (Collector - BackPipe) - outside;
        loss = loss1 + loss2 * T.Max(middle, zero - middle) + windLoss;
        var held = collectorStore * Collector + absorbed + loss * outside;

        // The pump as a duty: as much of the step as holds the collector at its switching temperature.
        var wanted = T4 + hold;
        var gate = gateNow * T.Min(T.Max((ceiling - T1) * T.Of(1 / CeilingFadeK), zero), one);
        var spare = held - (collectorStore + loss) * wanted;
        Pump = gate * T.Min(T.Max(spare / (flowMost * T.Max(wanted - BackPipe, T.Of(0.05))), zero), one);
        flow = flowMost * Pump;

        // While water flows the loss is that of the mean of inlet and outlet.
        halfLoss = loss * half * Pump;
        var inverseBack = one / (backStore + flow + backLoss);
        var inverseCollector = one / (collectorStore + flow + loss - halfLoss);
        var inverseOut = one / (outStore + flow + outLoss);
        backA = (backStore * BackPipe + backLoss * outside) * inverseBack;
        backB = flow * inverseBack;
        var slope = (flow - halfLoss) * inverseCollector;
        collectorA = held * inverseCollector;
        collectorB = slope;
        var forward = flow * inverseOut;
        var a = (outStore * OutPipe + outLoss * outside) * inverseOut + forward * (collectorA + slope * backA);
        var b = forward * slope * backB;
        var closed = one / (one - b * pass);
        outA = a * closed;
        outB = b * exchanger * closed;
    }

    /// <summary>Solves the tank, then the loop backwards.</summary>
    /// <param name="releaseW">Heat released in this step [W].</param>
    /// <param name="releaseShare">Share of the step that the release ran.</param>
    public void Settle(in T releaseW, in T releaseShare)
    {
        var zero = T.Of(0);
        var draw = releaseFlow * releaseShare;
        var (down, up) = (T.Max(flow - draw, zero), T.Max(draw - flow, zero));

        // Either down or up is zero, so the inner layers hang on the top or on the bottom alone.
        var inner = T.Of(1) / (layerStore + down + up);
        var (fall, rise) = (down * inner, up * inner);
        var (q2, q3) = (r2 * inner, r3 * inner);
        var inlet4 = pass + exchanger * outB;
        var p1 = layerStore + draw + down;
        var p4 = layerStore + flow + up;
        var x = flow * inlet4 + up * rise * rise;
        var y = draw + down * fall * fall;
        var s1 = r1 + flow * exchanger * outA + up * (q2 + rise * q3);
        var s4 = r4 - releaseW + down * (q3 + fall * q2);
        var inverse = T.Of(1) / (p1 * p4 - x * y);
        T1 = (s1 * p4 + x * s4) * inverse;
        T4 = (p1 * s4 + y * s1) * inverse;
        T2 = q2 + rise * q3 + fall * T1 + rise * rise * T4;
        T3 = q3 + fall * q2 + fall * fall * T1 + rise * T4;

        OutPipe = outA + outB * T4;
        BackPipe = backA + backB * (pass * OutPipe + exchanger * T4);
        Collector = collectorA + collectorB * BackPipe;
        SumToTank += flow * exchanger * (OutPipe - T4);
        SumAbsorbed += absorbed;
        SumCollectorLoss += loss * (Collector - outside) - halfLoss * (Collector - BackPipe);
        SumPipeLoss += outLoss * (OutPipe - outside) + backLoss * (BackPipe - outside);
        SumPump += Pump;
    }

    /// <summary>Warm water below cold rises: neighbours that stand upside down become their mean; heat is kept.</summary>
    public void Mix()
    {
        Pair(ref T1, ref T2);
        Pair(ref T2, ref T3);
        Pair(ref T3, ref T4);
        Pair(ref T1, ref T2);
        Pair(ref T2, ref T3);
        Pair(ref T1, ref T2);
        TopAhead = T1 + T.Of(0.5) * (T1 - topBefore);
        topBefore = T1;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Pair(ref T upper, ref T lower)
    {
        var mean = (upper + lower) * T.Of(0.5);
        upper = T.Max(upper, mean);
        lower = T.Min(lower, mean);
    }
}
