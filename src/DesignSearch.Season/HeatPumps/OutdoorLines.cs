using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.HeatPumps;

/// <summary>The lines of some pumps side by side.</summary>
internal readonly struct OutdoorLines<T>
    where T : unmanaged, ILane<T>
{
    private readonly T from, value, slope, bend1, turn1, bend2, turn2, bend3, turn3, to;

    public OutdoorLines(ReadOnlySpan<OutdoorLine> lines)
    {
        from = Pack.Of<T, OutdoorLine>(lines, x => x.FromC);
        value = Pack.Of<T, OutdoorLine>(lines, x => x.Value);
        slope = Pack.Of<T, OutdoorLine>(lines, x => x.Slope);
        bend1 = Pack.Of<T, OutdoorLine>(lines, x => x.Bend1C);
        turn1 = Pack.Of<T, OutdoorLine>(lines, x => x.Turn1);
        bend2 = Pack.Of<T, OutdoorLine>(lines, x => x.Bend2C);
        turn2 = Pack.Of<T, OutdoorLine>(lines, x => x.Turn2);
        bend3 = Pack.Of<T, OutdoorLine>(lines, x => x.Bend3C);
        turn3 = Pack.Of<T, OutdoorLine>(lines, x => x.Turn3);
        to = Pack.Of<T, OutdoorLine>(lines, x => x.ToC);
    }

    /// <summary>The value at an outdoor temperature.</summary>
    public T At(in T outdoorC)
    {
        var (zero, x) = (T.Of(0), T.Min(outdoorC, to));
        return value + slope * (x - from) + turn1 * T.Max(x - bend1, zero) + turn2 * T.Max(x - bend2, zero)
            + turn3 * T.Max(x - bend3, zero);
    }
}
