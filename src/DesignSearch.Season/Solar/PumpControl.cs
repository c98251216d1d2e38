using System.Runtime.CompilerServices;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Solar;

/// <summary>The collector's pump as a share of the step: differential controller with lock-out, light sensor, tank's ceiling.</summary>
/// <remarks>Equations in docs/model.md, "Collector, pipes, tank".</remarks>
internal readonly struct PumpControl<T>
    where T : unmanaged, ILane<T>
{
    private readonly T hold, ceiling, lockOut, lightGate, perLight, perFade, leastLift;

    /// <param name="holdK">Collector above the tank's bottom that the pump holds [K], see <see cref="PumpAssumptions.HoldK"/>.</param>
    /// <param name="ceilingC">Tank's top at which the pump rests [°C].</param>
    /// <param name="lockOutC">Collector at which it is not started [°C].</param>
    /// <param name="assumptions">The figures of <see cref="PumpAssumptions"/>.</param>
    public PumpControl(in T holdK, in T ceilingC, in T lockOutC, SeasonAssumptions assumptions)
    {
        (hold, ceiling, lockOut) = (holdK, ceilingC, lockOutC);
        lightGate = T.Of(assumptions[PumpAssumptions.LightGate]);
        perLight = T.Of(1 / assumptions[PumpAssumptions.LightBand]);
        perFade = T.Of(1 / assumptions[PumpAssumptions.CeilingFade]);
        leastLift = T.Of(assumptions[PumpAssumptions.LeastLift]);
    }

    /// <summary>How far mains and light sensor let the pump run in this hour [0…1].</summary>
    /// <param name="lightWPerM2">Light on the collector's plane [W/m²].</param>
    /// <param name="power">1 with mains, 0 in a power cut.</param>
    public readonly T Allowed(in T lightWPerM2, double power) =>
        T.Of(power) * T.Min(T.Max((lightWPerM2 - lightGate) * perLight, T.Of(0)), T.Of(1));

    /// <summary>Share of the step that the pump runs [0…1]: what holds the collector as wanted; nothing when too hot.</summary>
    /// <param name="allowed">See <see cref="Allowed"/>.</param>
    /// <param name="givenW">Right side of the collector's row at rest: store, sun, loss towards the air outside [W].</param>
    /// <param name="pivotWPerK">Left side of it: givenW = pivotWPerK × collector [W/K].</param>
    /// <param name="flowWPerK">Heat that the running water carries [W/K].</param>
    /// <param name="backC">Water that comes back to the collector [°C].</param>
    /// <param name="bottomC">Tank's bottom [°C].</param>
    /// <param name="topC">Tank's top [°C].</param>
    /// <param name="collectorC">Collector at the beginning of the step [°C].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T Duty(T allowed, T givenW, T pivotWPerK, T flowWPerK, T backC, T bottomC, T topC, T collectorC)
    {
        var (one, zero) = (T.Of(1), T.Of(0));
        var wanted = bottomC + hold;
        var room = T.Min(T.Max(T.Min(ceiling - topC, lockOut - collectorC) * perFade, zero), one);
        var spare = givenW - pivotWPerK * wanted;
        return allowed * room * T.Min(T.Max(spare / (flowWPerK * T.Max(wanted - backC, leastLift)), zero), one);
    }
}
