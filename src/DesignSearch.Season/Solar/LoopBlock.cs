using System.Runtime.CompilerServices;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;

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

    private readonly LoopTerms<T> terms;
    private readonly T pass;
    private readonly PumpControl<T> control;

    private T outside, windLoss, absorbed, allowed, loss;
    private T r1, r2, r3, r4, flow, outA, outB, collectorA, collectorB, backA, backB, halfLoss, topBefore;

    /// <summary>Loops at the beginning of a winter.</summary>
    /// <param name="loops">One a lane.</param>
    /// <param name="step">Step [s].</param>
    /// <param name="airC">Collector and pipes; the tank is not below 8 °C [°C].</param>
    /// <param name="assumptions">Figures of the pump's control.</param>
    public LoopBlock(ReadOnlySpan<LoopTerms<double>> loops, double step, double airC, SeasonAssumptions assumptions)
    {
        Span<LoopTerms<double>> lanes = stackalloc LoopTerms<double>[Pack.Widest];
        for (var i = 0; i < T.Width; i++)
            lanes[i] = LoopTerms.Over(loops[i], step);
        terms = Lift.Of<LoopTerms<double>, LoopTerms<T>, T>(lanes);
        pass = T.Of(1) - terms.Exchanger;
        control = new PumpControl<T>(terms.HoldK, terms.CeilingC, terms.LockOutC, assumptions);
        Collector = OutPipe = BackPipe = T.Of(airC);
        T1 = T2 = T3 = T4 = TopAhead = topBefore = T.Of(Math.Max(8, airC));
    }

    /// <summary>Heat in tank, collector and pipes, divided by the step, against 0 °C [W].</summary>
    public readonly T Stored => terms.LayerStore * (T1 + T2 + T3 + T4) + terms.CollectorStore * Collector + terms.OutStore * OutPipe + terms.BackStore * BackPipe;

    public readonly T TankMean => (T1 + T2 + T3 + T4) * T.Of(0.25);

    /// <summary>Takes one hour's weather and sun, and empties the hour's sums.</summary>
    public void Hour(in HourForcing f, in T beam, in T diffuse, in T cosIncidence)
    {
        outside = T.Of(f.OutsideC);
        windLoss = terms.LossPerWind * T.Of(f.RoofWindMPerS);
        var modifier = CollectorEfficiency.BeamModifier(terms.B0, cosIncidence);
        absorbed = CollectorEfficiency.AbsorbedW(terms.AreaM2, terms.Eta0, modifier, beam, terms.Diffuse, diffuse);
        Light = beam + diffuse;
        allowed = control.Allowed(Light, f.Power);
        SumAbsorbed = SumCollectorLoss = SumPipeLoss = SumTankLoss = SumToTank = SumPump = T.Of(0);
    }

    /// <summary>Takes the tank's loss at the temperatures now; the same heat warms the house and leaves the layers.</summary>
    public void StandingLoss(in T airC)
    {
        var (a, b, c, d, air) = (T1, T2, T3, T4, airC);
        var (l1, l2, l3, l4) = (terms.LayerLoss * (a - air), terms.LayerLoss * (b - air), terms.LayerLoss * (c - air), terms.LayerLoss * (d - air));
        var lost = l1 + l2 + l3 + l4;
        TankLoss = lost;
        SumTankLoss += lost;
        r1 = terms.LayerStore * a - l1;
        r2 = terms.LayerStore * b - l2;
        r3 = terms.LayerStore * c - l3;
        r4 = terms.LayerStore * d - l4;
    }

    /// <summary>The water's way from the tank's bottom through pipe, collector and pipe as a line in the bottom's temperature.</summary>
    public void Circulate()
    {
        var (one, half) = (T.Of(1), T.Of(0.5));
        var (collector, back, air) = (Collector, BackPipe, outside);
        var middle = collector - half * Pump * (collector - back) - air;
        var lost = CollectorEfficiency.LossWPerK(terms.Loss1, terms.Loss2, middle, windLoss);
        var held = terms.CollectorStore * collector + absorbed + lost * air;
        var pump = control.Duty(allowed, held, terms.CollectorStore + lost, terms.Flow, back, T4, T1, collector);
        var water = terms.Flow * pump;

        // While water flows the loss is that of the mean of inlet and outlet.
        var halfLost = lost * half * pump;
        var inverseBack = one / (terms.BackStore + water + terms.BackLoss);
        var inverseCollector = one / (terms.CollectorStore + water + lost - halfLost);
        var inverseOut = one / (terms.OutStore + water + terms.OutLoss);
        var coldBack = (terms.BackStore * back + terms.BackLoss * air) * inverseBack;
        var flowBack = water * inverseBack;
        var slope = (water - halfLost) * inverseCollector;
        var still = held * inverseCollector;
        var forward = water * inverseOut;
        var a = (terms.OutStore * OutPipe + terms.OutLoss * air) * inverseOut + forward * (still + slope * coldBack);
        var b = forward * slope * flowBack;
        var closed = one / (one - b * pass);
        outA = a * closed;
        outB = b * terms.Exchanger * closed;
        (loss, Pump, flow, halfLoss, backA, backB, collectorA, collectorB) = (lost, pump, water, halfLost, coldBack, flowBack, still, slope);
        SumPump += pump;
    }

    /// <summary>Solves the tank, then the loop backwards.</summary>
    /// <param name="releaseW">Heat released in this step [W].</param>
    /// <param name="releaseShare">Share of the step that the release ran.</param>
    public void Settle(in T releaseW, in T releaseShare)
    {
        var (zero, water, air) = (T.Of(0), flow, outside);
        var draw = terms.ReleaseFlow * releaseShare;
        var (down, up) = (T.Max(water - draw, zero), T.Max(draw - water, zero));

        // Either down or up is zero, so the inner layers hang on the top or on the bottom alone.
        var inner = T.Of(1) / (terms.LayerStore + down + up);
        var (fall, rise) = (down * inner, up * inner);
        var (q2, q3) = (r2 * inner, r3 * inner);
        var inlet4 = pass + terms.Exchanger * outB;
        var p1 = terms.LayerStore + draw + down;
        var p4 = terms.LayerStore + water + up;
        var x = water * inlet4 + up * rise * rise;
        var y = draw + down * fall * fall;
        var s1 = r1 + water * terms.Exchanger * outA + up * (q2 + rise * q3);
        var s4 = r4 - releaseW + down * (q3 + fall * q2);
        var inverse = T.Of(1) / (p1 * p4 - x * y);
        var top = (s1 * p4 + x * s4) * inverse;
        var bottom = (p1 * s4 + y * s1) * inverse;
        T1 = top;
        T2 = q2 + rise * q3 + fall * top + rise * rise * bottom;
        T3 = q3 + fall * q2 + fall * fall * top + rise * bottom;
        T4 = bottom;

        var outgoing = outA + outB * bottom;
        var back = backA + backB * (pass * outgoing + terms.Exchanger * bottom);
        var collector = collectorA + collectorB * back;
        (OutPipe, BackPipe, Collector) = (outgoing, back, collector);
        SumToTank += water * terms.Exchanger * (outgoing - bottom);
        SumAbsorbed += absorbed;
        SumCollectorLoss += loss * (collector - air) - halfLoss * (collector - back);
        SumPipeLoss += terms.OutLoss * (outgoing - air) + terms.BackLoss * (back - air);
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
        book.Electricity(SolarFlows.Pump, SumPump * terms.PumpW);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Pair(ref T upper, ref T lower)
    {
        var mean = (upper + lower) * T.Of(0.5);
        upper = T.Max(upper, mean);
        lower = T.Min(lower, mean);
    }
}
