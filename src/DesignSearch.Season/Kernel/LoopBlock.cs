namespace DesignSearch.Season;

/// <summary>Collector, pipes and a tank of four layers: one implicit step, upwind, solved in closed form. Equations in docs/model.md, "Loop".</summary>
internal struct LoopBlock
{
    private const double WaterJPerKgK = 4186;
    private const double LightWPerM2 = 20;
    private const double CeilingFadeK = 2;
    private const double LeastDifferenceK = 0.05;
    private const int Layers = 4;

    public double Collector, OutPipe, BackPipe, T1, T2, T3, T4;

    // Flows of the last step [W]; the pump's share of the step.
    public double Absorbed, CollectorLoss, PipeLoss, ToTank, TankLoss, Pump;

    public readonly bool HasCollector, HasTank;

    private readonly CollectorNumbers collector;
    private readonly PipeRunNumbers pipes;
    private readonly double step, layerStore, layerLoss, collectorStore, outStore, backStore, flowHeat, exchanger, releaseHeat, ceiling, startC;

    public LoopBlock(Installation installation, double stepSeconds, double startTemperatureC)
    {
        (collector, pipes) = (installation.Collector, installation.PipeRun);
        var tank = installation.Tank;
        step = stepSeconds;
        HasTank = tank.WaterKg > 0;
        HasCollector = HasTank && collector.AreaM2 > 0 && collector.FlowKgPerS > 0;
        layerStore = HasTank ? tank.WaterKg * WaterJPerKgK / Layers / step : 1;
        layerLoss = tank.LossWPerK / Layers;
        collectorStore = collector.AreaM2 * collector.CapacityJPerM2K / step;
        outStore = pipes.OutCapacityJPerK / step;
        backStore = pipes.BackCapacityJPerK / step;
        flowHeat = collector.FlowKgPerS * collector.FluidJPerKgK;
        exchanger = collector.ExchangerEffectiveness;
        releaseHeat = installation.Release.FlowKgPerS * WaterJPerKgK;
        ceiling = tank.CeilingC;
        startC = collector.StopDifferenceK + (collector.StartDifferenceK - collector.StopDifferenceK) / 4;
        Collector = OutPipe = BackPipe = startTemperatureC;
        T1 = T2 = T3 = T4 = Math.Max(8, startTemperatureC);
    }

    /// <summary>Heat in tank, collector and pipes against 0 °C [J].</summary>
    public readonly double StoredJ => HasTank
        ? step * (layerStore * (T1 + T2 + T3 + T4) + (HasCollector ? collectorStore * Collector + outStore * OutPipe + backStore * BackPipe : 0))
        : 0;

    public readonly double TankMeanC => (T1 + T2 + T3 + T4) / Layers;

    /// <summary>What the tank loses to the house at its temperatures now [W]; the same heat warms the house and leaves the tank.</summary>
    public readonly double LossToHouseW(double airC) => HasTank ? layerLoss * (T1 + T2 + T3 + T4 - Layers * airC) : 0;

    /// <summary>One step.</summary>
    /// <param name="absorbableWPerM2">Sun on the plane times optical efficiency and modifiers [W/m²].</param>
    /// <param name="lightWPerM2">Sun on the plane, for the light gate [W/m²].</param>
    /// <param name="outsideC">Outdoor air [°C].</param>
    /// <param name="windMPerS">Wind at the collector [m/s].</param>
    /// <param name="airC">Air in the house that the tank's loss was reckoned with [°C].</param>
    /// <param name="releaseW">Heat released from the tank in this step [W].</param>
    /// <param name="releaseShare">Share of the step that the release ran.</param>
    public void Step(double absorbableWPerM2, double lightWPerM2, double outsideC, double windMPerS, double airC, double releaseW, double releaseShare)
    {
        if (!HasTank)
            return;
        // Each layer gives its loss; the heat released leaves with the water that comes back to the bottom.
        var r1 = layerStore * T1 - layerLoss * (T1 - airC);
        var r2 = layerStore * T2 - layerLoss * (T2 - airC);
        var r3 = layerStore * T3 - layerLoss * (T3 - airC);
        var r4 = layerStore * T4 - layerLoss * (T4 - airC) - releaseW;
        TankLoss = LossToHouseW(airC);
        var up = releaseHeat * releaseShare;
        if (HasCollector)
        {
            Solar(absorbableWPerM2, lightWPerM2, outsideC, windMPerS, r1, r2, r3, r4, up);
        }
        else
        {
            Layer(r1, r2, r3, r4, 0, up, 0, 0);
        }

        Mix();
    }

    private void Solar(double absorbable, double light, double outsideC, double wind, double r1, double r2, double r3, double r4, double up)
    {
        var area = collector.AreaM2;
        var difference = (Collector + BackPipe) / 2 - outsideC;
        var loss = area * (collector.A1WPerM2K + collector.A2WPerM2K2 * Math.Abs(difference) + collector.WindLossJPerM3K * wind);
        Absorbed = area * absorbable;

        // The pump as a duty: as much of the step as holds the collector at its switching temperature.
        var wanted = T4 + startC;
        var gate = Math.Clamp((light - LightWPerM2) / LightWPerM2, 0, 1) * Math.Clamp((ceiling - T1) / CeilingFadeK, 0, 1);
        var spare = collectorStore * Collector + Absorbed + loss * outsideC - (collectorStore + loss) * wanted;
        Pump = gate * Math.Clamp(spare / (flowHeat * Math.Max(wanted - BackPipe, LeastDifferenceK)), 0, 1);
        var flow = flowHeat * Pump;

        // Return pipe r, collector p, outgoing pipe o, each a line in the one before; loss at the mean of inlet and outlet while water flows.
        var half = Pump / 2;
        var pr = backStore + flow + pipes.BackLossWPerK;
        var pp = collectorStore + flow + loss * (1 - half);
        var po = outStore + flow + pipes.OutLossWPerK;
        var (ar, br) = pr > 0 ? ((backStore * BackPipe + pipes.BackLossWPerK * outsideC) / pr, flow / pr) : (BackPipe, 0);
        var (ap, bp) = ((collectorStore * Collector + Absorbed + loss * outsideC) / pp, (flow - loss * half) / pp);
        var (ao, bo) = po > 0 ? ((outStore * OutPipe + pipes.OutLossWPerK * outsideC) / po, flow / po) : (OutPipe, 0);
        // o = a + b·(inlet of the return pipe), inlet = (1 − e)·o + e·T4.
        var (a, b) = (ao + bo * (ap + bp * ar), bo * bp * br);
        var closed = 1 / (1 - b * (1 - exchanger));
        var (outA, outB) = (a * closed, b * exchanger * closed);

        // Water enters the top layer at T4 + e·(o − T4).
        Layer(r1, r2, r3, r4, flow, up, flow * exchanger * outA, flow * (1 - exchanger + exchanger * outB));

        var o = outA + outB * T4;
        var inlet = (1 - exchanger) * o + exchanger * T4;
        var r = ar + br * inlet;
        var p = ap + bp * r;
        ToTank = flow * exchanger * (o - T4);
        CollectorLoss = loss * ((1 - half) * p + half * r - outsideC);
        PipeLoss = pipes.OutLossWPerK * (o - outsideC) + pipes.BackLossWPerK * (r - outsideC);
        (Collector, OutPipe, BackPipe) = (p, o, r);
    }

    // Layers with the solar flow down and the release flow up; top gets in0 + in4·T4 from the collector.
    private void Layer(double r1, double r2, double r3, double r4, double down, double up, double in0, double in4)
    {
        var net = down - up;
        if (net >= 0)
        {
            // T2, T3 hang on T1; T1 and T4 remain.
            var p1 = layerStore + up + net;
            var inner = 1 / (layerStore + net);
            var (a2, b2) = (r2 * inner, net * inner);
            var (a3, b3) = ((r3 + net * a2) * inner, net * b2 * inner);
            var p4 = layerStore + down;
            // p1·T1 − in4·T4 = r1 + in0;  −(up + net·b3)·T1 + p4·T4 = r4 + net·a3.
            var y = up + net * b3;
            var determinant = p1 * p4 - in4 * y;
            var (q1, q4) = (r1 + in0, r4 + net * a3);
            T1 = (q1 * p4 + in4 * q4) / determinant;
            T4 = (p1 * q4 + y * q1) / determinant;
            T2 = a2 + b2 * T1;
            T3 = a3 + b3 * T1;
        }
        else
        {
            // T3, T2, T1 hang on T4.
            var rise = -net;
            var inner = 1 / (layerStore + rise);
            var (a3, b3) = (r3 * inner, rise * inner);
            var (a2, b2) = ((r2 + rise * a3) * inner, rise * b3 * inner);
            var p1 = layerStore + up;
            var (a1, b1) = ((r1 + in0 + rise * a2) / p1, (in4 + rise * b2) / p1);
            T4 = (r4 + up * a1) / (layerStore + down + rise - up * b1);
            T3 = a3 + b3 * T4;
            T2 = a2 + b2 * T4;
            T1 = a1 + b1 * T4;
        }
    }

    // Warm water below cold rises: neighbours that stand upside down become their mean; heat is kept.
    private void Mix()
    {
        Pair(ref T1, ref T2);
        Pair(ref T2, ref T3);
        Pair(ref T3, ref T4);
        Pair(ref T1, ref T2);
        Pair(ref T2, ref T3);
        Pair(ref T1, ref T2);
    }

    private static void Pair(ref double upper, ref double lower)
    {
        if (upper >= lower)
            return;
        upper = lower = (upper + lower) / 2;
    }
}
