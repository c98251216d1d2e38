namespace DesignSearch.Season.Lanes;

/// <summary>Lays one number of several layouts side by side, and takes it apart again; used when a batch begins and ends.</summary>
internal static class Pack
{
    public const int Widest = 8;

    /// <summary>What memory of lanes is aligned to [bytes].</summary>
    public const int CacheLine = 64;

    public static T Of<T, TItem>(ReadOnlySpan<TItem> items, Func<TItem, double> pick)
        where T : unmanaged, ILane<T>
    {
        Span<double> side = stackalloc double[Widest];
        for (var i = 0; i < T.Width; i++)
            side[i] = pick(items[i]);
        return T.Load(side);
    }

    public static double At<T>(in T lanes, int lane)
        where T : unmanaged, ILane<T>
    {
        Span<double> side = stackalloc double[Widest];
        T.Store(lanes, side);
        return side[lane];
    }
}
