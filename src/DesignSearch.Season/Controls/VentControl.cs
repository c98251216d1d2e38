using System.Runtime.CompilerServices;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Controls;

/// <summary>Vents that wax or a motor opens by the air's temperature, without mains as well.</summary>
/// <param name="most">Loss when they are wide open [W/K].</param>
/// <param name="aboveC">Air at which they begin to open [°C].</param>
internal struct VentControl<T>(in T most, in T aboveC)
    where T : unmanaged, ILane<T>
{
    private readonly T most = most, aboveC = aboveC;

    // One over how much warmer than outside the air is where they begin to open [1/K].
    private T perWarmer;

    /// <summary>Takes one hour's air outside [°C].</summary>
    public void Hour(T outsideC) => perWarmer = T.Of(1) / T.Max(aboveC - outsideC, T.Of(0.1));

    /// <summary>As much as brings the air back to where they open, as far as they go; nothing while it is warmer outside [W/K].</summary>
    /// <param name="pivot">Row of the air: pivot × air = rest [W/K].</param>
    /// <param name="rest">Its right-hand side [W].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly T Conductance(T pivot, T rest) => T.Min(T.Max((rest - aboveC * pivot) * perWarmer, T.Of(0)), most);
}
