using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace DesignSearch.Season.Lanes;

/// <summary>Lays the numbers of several layouts side by side.</summary>
internal static class Lift
{
    /// <summary>From one struct of doubles for each layout to the same struct of lanes, field by field in the order in which they are declared.</summary>
    /// <typeparam name="TOne">The struct over <see cref="double"/>: no other field in it.</typeparam>
    /// <typeparam name="TMany">The same struct over the lane type.</typeparam>
    /// <typeparam name="T">The lane type.</typeparam>
    /// <param name="layouts">As many as the lane type is wide, or more.</param>
    public static TMany Of<TOne, TMany, T>(ReadOnlySpan<TOne> layouts)
        where TOne : unmanaged
        where TMany : unmanaged
        where T : unmanaged, ILane<T>
    {
        var many = default(TMany);
        var numbers = MemoryMarshal.Cast<TOne, double>(layouts);
        var lanes = MemoryMarshal.CreateSpan(ref Unsafe.As<TMany, T>(ref many), Unsafe.SizeOf<TMany>() / Unsafe.SizeOf<T>());
        var fields = Unsafe.SizeOf<TOne>() / sizeof(double);
        Span<double> side = stackalloc double[Pack.Widest];
        for (var field = 0; field < fields; field++)
        {
            for (var i = 0; i < T.Width; i++)
                side[i] = numbers[i * fields + field];
            lanes[field] = T.Load(side);
        }

        return many;
    }
}
