using System.Runtime.CompilerServices;

namespace DesignSearch.Season.Lanes;

/// <summary>One layout.</summary>
internal readonly struct Lane1(double v) : ILane<Lane1>
{
    private readonly double v = v;

    public static int Width => 1;

    public static Lane1 Of(double x) => new(x);

    public static Lane1 Load(ReadOnlySpan<double> from) => new(from[0]);

    public static void Store(in Lane1 x, Span<double> to) => to[0] = x.v;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator +(Lane1 a, Lane1 b) => new(a.v + b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator -(Lane1 a, Lane1 b) => new(a.v - b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator *(Lane1 a, Lane1 b) => new(a.v * b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator /(Lane1 a, Lane1 b) => new(a.v / b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Max(Lane1 a, Lane1 b) => new(a.v > b.v ? a.v : b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Min(Lane1 a, Lane1 b) => new(a.v < b.v ? a.v : b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 IfGreater(Lane1 a, Lane1 b, Lane1 then, Lane1 otherwise) => new(a.v > b.v ? then.v : otherwise.v);
}
