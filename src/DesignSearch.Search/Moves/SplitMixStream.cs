namespace DesignSearch.Search.Moves;

/// <summary>A small generator (SplitMix64 by Steele, Lea and Flood, 2014): a stream of its own for every seed and place.</summary>
internal struct SplitMixStream
{
    private ulong state;

    public SplitMixStream(ulong seed, ulong stream, ulong place)
    {
        state = seed;
        state = Next() ^ (stream * 0xD1B54A32D192ED03);
        state = Next() ^ (place * 0x8CB92BA72F3D8DD7);
        state = Next();
    }

    public ulong Next()
    {
        state += 0x9E3779B97F4A7C15;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    /// <summary>Even in [0, 1).</summary>
    public double Unit() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Even among 0 … count − 1.</summary>
    public int Below(int count) => (int)Math.BigMul(Next(), (ulong)count, out _);

    /// <summary>Normal with mean 0 and deviation 1 (sum of two evens would be too narrow; this is Box and Muller, 1958).</summary>
    public double Normal() => Math.Sqrt(-2 * Math.Log(1 - Unit())) * Math.Cos(2 * Math.PI * Unit());
}
