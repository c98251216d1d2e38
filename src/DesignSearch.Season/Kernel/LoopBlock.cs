namespace DesignSearch.Season;

/// <summary>
/// Collector, pipe out, tank in four layers, pipe back over one implicit Euler step. Upwind flow makes collector and pipes affine in
/// the bottom layer, so one division closes the circuit; the pump is a duty between rest and full flow.
/// </summary>
internal struct LoopBlock
{
    public double CollectorC, OutC, BackC, TopC, UpperC, LowerC, BottomC;

    /// <summary>Mean flows of the last step [W], and the share of it the pump ran.</summary>
    public double CollectorLossW, PipeLossW, YieldW, PumpShare;

    private const double WaterJPerKgK = 4186;

    private readonly CollectorNumbers collector;
    private readonly PipeRunNumbers pipes;
    private readonly TankNumbers tank;
    private readonly bool flows, stands;
    private readonly double collectorStore, outStore, backStore, layerStore, flowWPerK, startC, releaseWPerK, outRestInverse, backRestInverse, fallPerW;
    private readonly double step;

    public LoopBlock(Installation layout, SeasonAssumptions a, double step)
    {
        (collector, pipes, tank, this.step) = (layout.Collector, layout.PipeRun, layout.Tank, step);
        HasTank = tank.WaterKg > 0;
        stands = collector.AreaM2 > 0;
        flows = stands && HasTank && collector.FlowKgPerS > 0;
        var share = collector.EmptyAtRest ? a.EmptyCapacityShare : 1;
        collectorStore = stands ? share * collector.CapacityJPerM2K * collector.AreaM2 / step : 0;
        outStore = flows ? share * pipes.OutCapacityJPerK / step : 0;
        backStore = flows ? share * pipes.BackCapacityJPerK / step : 0;
        layerStore = HasTank ? tank.WaterKg / 4 * WaterJPerKgK / step : 0;
        outRestInverse = Inverse(outStore + pipes.OutLossWPerK);
        backRestInverse = Inverse(backStore + pipes.BackLossWPerK);
        fallPerW = HasTank ? 1 / (4 * layerStore) : 0;
        flowWPerK = collector.FlowKgPerS * collector.FluidJPerKgK;
        startC = Math.Max(collector.StopDifferenceK + (collector.StartDifferenceK - collector.StopDifferenceK) / 4, 0.1);
        releaseWPerK = layout.Release.FlowKgPerS * WaterJPerKgK;
    }

    public bool HasTank { get; }

    public readonly bool HasCollector => stands;

    public readonly double MeanC => (TopC + UpperC + LowerC + BottomC) / 4;

    /// <summary>Heat held by tank, collector and pipes above 0 °C [J].</summary>
    public readonly double StoredJ =>
        step * (collectorStore * CollectorC + outStore * OutC + backStore * BackC + layerStore * (TopC + UpperC + LowerC + BottomC));

    public void Step(in LoopHour hour, double tankLossW, double releaseW, double releaseShare)
    {
        if (stands)
            Collect(hour);
        if (HasTank)
        {
            Lose(tankLossW);
            Release(releaseW, releaseShare);
            Mix();
        }
    }

    /// <summary>Loss of the tank to the house air at the present temperatures [W].</summary>
    public readonly double TankLossW(double houseC) => HasTank ? tank.LossWPerK * (MeanC - houseC) : 0;

    private void Collect(in LoopHour hour)
    {
        var outside = hour.OutsideC;
        var loss = collector.AreaM2 * CollectorEfficiency.LossWPerM2K(collector, CollectorC - outside, hour.WindMPerS);
        var pivot = collectorStore + loss;
        var right = collectorStore * CollectorC + hour.AbsorbedW + loss * outside;
        PumpShare = flows
            ? Math.Clamp((right - pivot * (BottomC + startC)) / (2 * flowWPerK * startC), 0, 1) * Math.Clamp((tank.CeilingC - BottomC) / 2, 0, 1)
            : 0;
        if (PumpShare <= 0)
            Rest(outside, pivot, right);
        else
            Circulate(outside, pivot, right);
        CollectorLossW = loss * (CollectorC - outside);
        PipeLossW = flows ? pipes.OutLossWPerK * (OutC - outside) + pipes.BackLossWPerK * (BackC - outside) : 0;
    }

    private void Rest(double outside, double pivot, double right)
    {
        CollectorC = Inverse(pivot) * right;
        OutC = outRestInverse * (outStore * OutC + pipes.OutLossWPerK * outside);
        BackC = backRestInverse * (backStore * BackC + pipes.BackLossWPerK * outside);
        YieldW = 0;
    }

    private void Circulate(double outside, double pivot, double right)
    {
        var flow = PumpShare * flowWPerK;
        var effectiveness = collector.ExchangerEffectiveness;

        // Back pipe, collector and out pipe as a + b·(bottom layer), then once around the circuit.
        var backInverse = Inverse(backStore + pipes.BackLossWPerK + flow);
        var (backOwn, backFlow) = (backInverse * (backStore * BackC + pipes.BackLossWPerK * outside), backInverse * flow);
        var collectorInverse = Inverse(pivot + 2 * flow);
        var (own, fromBack) = (collectorInverse * right, collectorInverse * 2 * flow);
        var outInverse = Inverse(outStore + pipes.OutLossWPerK + flow);
        var (outOwn, outFlow) = (outInverse * (outStore * OutC + pipes.OutLossWPerK * outside), outInverse * flow);
        var leaving = 2 * fromBack - 1;
        var around = outFlow * leaving * backFlow;
        var outInverseAround = 1 / (1 - around * (1 - effectiveness));
        var outConstant = (outOwn + outFlow * (2 * own + leaving * backOwn)) * outInverseAround;
        var outBottom = around * effectiveness * outInverseAround;

        // Down through the tank: bottom' = rest + reach · inlet, inlet = ε·out + (1 − ε)·bottom'.
        var inverse = 1 / (layerStore + flow);
        var (keep, pass) = (inverse * layerStore, inverse * flow);
        var rest = keep * (BottomC + pass * (LowerC + pass * (UpperC + pass * TopC)));
        var reach = pass * pass * pass * pass;
        var bottom = (rest + reach * effectiveness * outConstant) / (1 - reach * (effectiveness * outBottom + 1 - effectiveness));
        OutC = outConstant + outBottom * bottom;
        var inlet = effectiveness * OutC + (1 - effectiveness) * bottom;
        TopC = keep * TopC + pass * inlet;
        UpperC = keep * UpperC + pass * TopC;
        LowerC = keep * LowerC + pass * UpperC;
        BottomC = keep * BottomC + pass * LowerC;
        BackC = backOwn + backFlow * ((1 - effectiveness) * OutC + effectiveness * BottomC);
        CollectorC = own + fromBack * BackC;
        YieldW = flow * effectiveness * (OutC - BottomC);
    }

    // The same heat that the house received in this step.
    private void Lose(double tankLossW)
    {
        var fall = tankLossW * fallPerW;
        (TopC, UpperC, LowerC, BottomC) = (TopC - fall, UpperC - fall, LowerC - fall, BottomC - fall);
    }

    // Water leaves at the top and comes back cooler at the bottom.
    private void Release(double heatW, double share)
    {
        var flow = share * releaseWPerK;
        if (flow > 0)
        {
            var inverse = 1 / (layerStore + flow);
            var (keep, pass) = (inverse * layerStore, inverse * flow);
            var rest = keep * (TopC + pass * (UpperC + pass * (LowerC + pass * BottomC)));
            var reach = pass * pass * pass * pass;
            var top = (rest - reach * heatW / flow) / (1 - reach);
            BottomC = keep * BottomC + pass * (top - heatW / flow);
            LowerC = keep * LowerC + pass * BottomC;
            UpperC = keep * UpperC + pass * LowerC;
            TopC = keep * TopC + pass * UpperC;
        }
        else if (heatW > 0)
        {
            TopC -= heatW / layerStore;
        }
    }

    // Warm water rises: neighbours that stand upside down are mixed, heat kept.
    private void Mix()
    {
        Pair(ref TopC, ref UpperC);
        Pair(ref UpperC, ref LowerC);
        Pair(ref LowerC, ref BottomC);
        Pair(ref TopC, ref UpperC);
        Pair(ref UpperC, ref LowerC);
        Pair(ref TopC, ref UpperC);
    }

    private static void Pair(ref double above, ref double below)
    {
        var mean = (above + below) / 2;
        above = Math.Max(above, mean);
        below = Math.Min(below, mean);
    }

    private static double Inverse(double pivot) => pivot > 0 ? 1 / pivot : 0;
}
