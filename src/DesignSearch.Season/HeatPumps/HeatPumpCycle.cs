using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.HeatPumps;

/// <summary>Formulas of a heat pump's efficiency, over lanes. Equations in docs/model.md, "Heat pump".</summary>
internal static class HeatPumpCycle
{
    /// <summary>Indoor air of the rated points [°C].</summary>
    public const double RatedIndoorC = 20;

    private const double NoFrostAboveC = 6, FullFrostFromC = 3, FullFrostToC = -7, NoFrostBelowC = -15;

    /// <summary>How much of the full frost penalty applies: 0 above +6 °C and below −15 °C, 1 between +3 and −7 °C.</summary>
    public static T Frosting<T>(in T outdoorC)
        where T : unmanaged, ILane<T>
    {
        var (one, zero) = (T.Of(1), T.Of(0));
        var warm = (T.Of(NoFrostAboveC) - outdoorC) * T.Of(1 / (NoFrostAboveC - FullFrostFromC));
        var cold = (outdoorC - T.Of(NoFrostBelowC)) * T.Of(1 / (FullFrostToC - NoFrostBelowC));
        return T.Max(T.Min(T.Min(warm, cold), one), zero);
    }

    /// <summary>Factor on the efficiency for indoor air that is not 20 °C; above it the efficiency falls by the same share.</summary>
    public static T Indoor<T>(in T airC, in T perK, in T mostK)
        where T : unmanaged, ILane<T>
    {
        var below = T.Min(T.Max(T.Of(RatedIndoorC) - airC, T.Of(0) - mostK), mostK);
        return T.Of(1) + perK * below;
    }

    /// <summary>Share of the time that the compressor runs at a mean heat, 1 from its least output on.</summary>
    public static T Running<T>(in T heatW, in T leastW)
        where T : unmanaged, ILane<T> => T.Min(heatW / T.Max(leastW, T.Of(1e-9)), T.Of(1));

    /// <summary>
    /// Heat over electricity at a mean heat: rising straight from full to least output by the gain, then 1 − Cd (1 − CR) after EN 14825
    /// (air to air),
    /// CR the mean heat over the least output.
    /// </summary>
    /// <param name="heatW">Mean heat [W], 0 to full.</param>
    /// <param name="fullW">Full output [W].</param>
    /// <param name="leastW">Least output while running [W].</param>
    /// <param name="cop">Heat over electricity at full output.</param>
    /// <param name="gain">Efficiency at least output over that at full output.</param>
    /// <param name="cyclingLoss">Cd.</param>
    public static T PartLoadCop<T>(in T heatW, in T fullW, in T leastW, in T cop, in T gain, in T cyclingLoss)
        where T : unmanaged, ILane<T>
    {
        var (one, zero) = (T.Of(1), T.Of(0));
        var down = T.Min(T.Max((fullW - heatW) / T.Max(fullW - leastW, T.Of(1e-9)), zero), one);
        return cop * (one + (gain - one) * down) * (one - cyclingLoss * (one - Running(heatW, leastW)));
    }
}
