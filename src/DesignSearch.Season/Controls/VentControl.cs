using System.Runtime.CompilerServices;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Controls;

/// <summary>Vents that wax or a motor opens by the air's temperature, without mains as well.</summary>
/// <param name="most">Loss when they are wide open [W/K].</param>
/// <param name="aboveC">Air at which they begin to open [°C].</param>
internal readonly struct VentControl<T>(in T most, in T aboveC)
    where T : unmanaged, ILane<T>
{
    private readonly T most = most, aboveC = aboveC;

    /// <summary>As much as brings the air back to where they open, as far as they go; nothing while it is warmer outside [W/K].</summary>
    /// <param name="pivot">Row of the air: pivot × air = rest [W/K].</param>
    /// <param name="rest">Its right-hand side [W].</param>
    /// <param name="outsideC">Air outside [°C].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Conductance(T pivot, T rest, T outsideC) =>
        T.Min(T.Max((rest - aboveC * pivot) / T.Max(aboveC - outsideC, T.Of(0.1)), T.Of(0)), most);
}
