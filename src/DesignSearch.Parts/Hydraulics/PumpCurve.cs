using DesignSearch.Parts.Piping;
using DesignSearch.Physics;

namespace DesignSearch.Parts.Hydraulics;

/// <summary>The head of a pump, falling as the square of the flow.</summary>
/// <param name="HeadAtNoFlowM">Head against a shut valve [m], above 0.</param>
/// <param name="FlowAtNoHeadM3PerS">Flow against no head [m³/s], above 0.</param>
public readonly record struct PumpCurve(double HeadAtNoFlowM, double FlowAtNoHeadM3PerS)
{
    private const double PaPerM = Water.DensityKgPerM3 * Gravity.StandardMPerS2;

    /// <summary>The curve of a pump of the catalogue.</summary>
    /// <param name="pump">The pump.</param>
    public static PumpCurve Of(Pump pump) => new(pump.HeadAtNoFlowM, pump.FlowAtNoHeadLPerMin / 60_000);

    /// <summary>Head at a flow [m]; negative beyond the end of the curve.</summary>
    /// <param name="flowM3PerS">Flow [m³/s], 0 or more.</param>
    public double HeadM(double flowM3PerS)
    {
        var share = flowM3PerS / FlowAtNoHeadM3PerS;
        return HeadAtNoFlowM * (1 - (share * share));
    }

    /// <summary>Pressure at a flow [Pa]; negative beyond the end of the curve.</summary>
    /// <param name="flowM3PerS">Flow [m³/s], 0 or more.</param>
    public double HeadPa(double flowM3PerS) => HeadM(flowM3PerS) * PaPerM;

    /// <summary>Flow at which the pump's head equals what the loop needs [m³/s]; 0 when it cannot even lift.</summary>
    /// <param name="staticM">Lift that the loop needs without flow [m], 0 or more.</param>
    /// <param name="dropPa">Pressure lost in the loop at a flow [Pa], growing with the flow [m³/s].</param>
    public double FlowM3PerS(double staticM, Func<double, double> dropPa)
    {
        if (HeadAtNoFlowM <= staticM)
            return 0;
        var (low, high) = (0.0, FlowAtNoHeadM3PerS);
        for (var round = 0; round < 60; round++)
        {
            var middle = (low + high) / 2;
            if (HeadPa(middle) > (staticM * PaPerM) + dropPa(middle))
                low = middle;
            else
                high = middle;
        }

        return low;
    }
}
