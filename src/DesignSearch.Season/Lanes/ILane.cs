namespace DesignSearch.Season.Lanes;

/// <summary>Some layouts side by side, one double each; the physics is written once over this type and gives every layout the same bits at any width.</summary>
/// <typeparam name="T">The lane type itself.</typeparam>
internal interface ILane<T>
    where T : unmanaged, ILane<T>
{
    static abstract int Width { get; }

    static abstract T Of(double x);

    static abstract T Load(ReadOnlySpan<double> from);

    static abstract void Store(in T x, Span<double> to);

    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator *(T a, T b);

    static abstract T operator /(T a, T b);

    static abstract T Max(T a, T b);

    static abstract T Min(T a, T b);

    /// <summary>Lane by lane: a &gt; b ? then : otherwise.</summary>
    static abstract T IfGreater(T a, T b, T then, T otherwise);
}
