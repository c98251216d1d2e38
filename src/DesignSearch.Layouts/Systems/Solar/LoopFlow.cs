using DesignSearch.Parts.Hydraulics;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Solar;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>Where pump and pipes settle.</summary>
/// <param name="WantedKgPerS">Flow the collectors want [kg/s].</param>
/// <param name="KgPerS">Flow while running, throttled to what is wanted [kg/s].</param>
/// <param name="LiftM">Height the pump must lift an empty loop's water before it runs [m]; 0 for a full loop.</param>
/// <param name="HeadAtNoFlowM">Greatest head of the pump [m].</param>
/// <param name="DropPa">Pressure lost at the flow [Pa].</param>
public sealed record LoopFlow(double WantedKgPerS, double KgPerS, double LiftM, double HeadAtNoFlowM, double DropPa)
{
    private const double WaterC = 30;

    // Three quarters of what rubs is pipe, a quarter bends and fittings (common practice, no source).
    private const double PipeShare = 0.75;

    private const double LPerMinOfM3PerS = 60000;

    /// <summary>Finds the flow at which the pump's head meets the loss of pipes and collectors.</summary>
    /// <param name="collector">The collectors, all side by side.</param>
    /// <param name="count">How many.</param>
    /// <param name="pump">The pump.</param>
    /// <param name="pipe">The pipe.</param>
    /// <param name="lengthM">Pipe out and back [m]; a third more is counted for bends and fittings.</param>
    /// <param name="liftM">
    /// Lift of an empty loop [m]. All of it counts while the pump runs too: the vent at the highest place lets air in, so no siphon helps.
    /// </param>
    /// <param name="wantedKgPerSM2">
    /// Flow per square metre of collector that is wanted [kg/(s·m²)]; 0.006 to 0.02 is common practice, no source.
    /// </param>
    public static LoopFlow Settle(Collector collector, int count, Pump pump, Pipe pipe, double lengthM, double liftM, double wantedKgPerSM2)
    {
        var density = WaterProperties.DensityKgPerM3(WaterC);
        var wanted = Math.Min(wantedKgPerSM2 * collector.AreaM2, collector.MaxFlowLPerMin / LPerMinOfM3PerS * density) * count;
        var curve = PumpCurve.Of(pump);
        double Drop(double kgPerS)
        {
            var m3PerS = kgPerS / density;
            var share = m3PerS / count / (collector.MaxFlowLPerMin / LPerMinOfM3PerS);
            var pipesPa = PipeFriction.DropPa(m3PerS, pipe.BoreMm / 1000, lengthM / PipeShare, pipe.RoughnessUm * 1e-6, WaterC);
            return pipesPa + (collector.DropKPaAtMaxFlow * 1000 * share * share);
        }

        var reached = curve.FlowM3PerS(liftM, m3PerS => Drop(m3PerS * density)) * density;
        var flow = Math.Min(wanted, reached);
        return new(wanted, flow, liftM, pump.HeadAtNoFlowM, Drop(flow));
    }
}
