using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace DesignSearch.Season.Lanes;

/// <summary>Eight layouts in one register of 512 bits.</summary>
internal readonly struct Lane8(Vector512<double> v) : ILane<Lane8>
{
    private readonly Vector512<double> v = v;

    public static int Width => 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Of(double x) => new(Vector512.Create(x));

    public static Lane8 Load(ReadOnlySpan<double> from) => new(Vector512.Create(from));

    public static void Store(in Lane8 x, Span<double> to) => x.v.CopyTo(to);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator +(Lane8 a, Lane8 b) => new(a.v + b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator -(Lane8 a, Lane8 b) => new(a.v - b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator *(Lane8 a, Lane8 b) => new(a.v * b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator /(Lane8 a, Lane8 b) => new(a.v / b.v);

    // The hardware's own rule, a > b ? a : b: the one that Lane1 spells out.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Max(Lane8 a, Lane8 b) => new(Vector512.MaxNative(a.v, b.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Min(Lane8 a, Lane8 b) => new(Vector512.MinNative(a.v, b.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 IfGreater(Lane8 a, Lane8 b, Lane8 then, Lane8 otherwise) => new(Vector512.ConditionalSelect(Vector512.GreaterThan(a.v, b.v), then.v, otherwise.v));
}
