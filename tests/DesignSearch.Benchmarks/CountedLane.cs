using DesignSearch.Season.Lanes;

namespace DesignSearch.Benchmarks;

/// <summary>One layout that counts the operations done to it: + − × ÷, smaller, larger and choice, once each.</summary>
internal readonly struct CountedLane(double v) : ILane<CountedLane>
{
    private readonly double v = v;

    /// <summary>Operations so far, and divisions among them.</summary>
    public static (long All, long Divisions) Done { get; private set; }

    public static int Width => 1;

    public static CountedLane Of(double x) => new(x);

    public static CountedLane Load(ReadOnlySpan<double> from) => new(from[0]);

    public static void Store(in CountedLane x, Span<double> to) => to[0] = x.v;

    public static CountedLane operator +(CountedLane a, CountedLane b) => Counted(a.v + b.v);

    public static CountedLane operator -(CountedLane a, CountedLane b) => Counted(a.v - b.v);

    public static CountedLane operator *(CountedLane a, CountedLane b) => Counted(a.v * b.v);

    public static CountedLane operator /(CountedLane a, CountedLane b) => Counted(a.v / b.v, 1);

    public static CountedLane Max(CountedLane a, CountedLane b) => Counted(a.v > b.v ? a.v : b.v);

    public static CountedLane Min(CountedLane a, CountedLane b) => Counted(a.v < b.v ? a.v : b.v);

    public static CountedLane IfGreater(CountedLane a, CountedLane b, CountedLane then, CountedLane otherwise) => Counted(a.v > b.v ? then.v : otherwise.v);

    private static CountedLane Counted(double result, int divisions = 0)
    {
        Done = (Done.All + 1, Done.Divisions + divisions);
        return new(result);
    }
}
