using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace DesignSearch.Season.Lanes;

/// <summary>Four layouts in one register of 256 bits.</summary>
internal readonly struct Lane4(Vector256<double> v) : ILane<Lane4>
{
    private readonly Vector256<double> v = v;

    public static int Width => 4;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Of(double x) => new(Vector256.Create(x));

    public static Lane4 Load(ReadOnlySpan<double> from) => new(Vector256.Create(from));

    public static void Store(in Lane4 x, Span<double> to) => x.v.CopyTo(to);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator +(Lane4 a, Lane4 b) => new(a.v + b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator -(Lane4 a, Lane4 b) => new(a.v - b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator *(Lane4 a, Lane4 b) => new(a.v * b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator /(Lane4 a, Lane4 b) => new(a.v / b.v);

    // The hardware's own rule, a > b ? a : b: the one that Lane1 spells out.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Max(Lane4 a, Lane4 b) => new(Vector256.MaxNative(a.v, b.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Min(Lane4 a, Lane4 b) => new(Vector256.MinNative(a.v, b.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 IfGreater(Lane4 a, Lane4 b, Lane4 then, Lane4 otherwise) => new(Vector256.ConditionalSelect(Vector256.GreaterThan(a.v, b.v), then.v, otherwise.v));
}
