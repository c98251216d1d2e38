using MathNet.Numerics.Distributions;

namespace DesignSearch.Climate.Synthesis;

/// <summary>A stream of random numbers of its own for every seed, purpose and index: xoshiro256** started by SplitMix64 (Blackman and Vigna 2018).</summary>
internal sealed class XoshiroStream
{
    private readonly ulong[] state = new ulong[4];

    public XoshiroStream(ulong seed, RandomPurpose purpose, int index)
    {
        var mix = seed ^ ((ulong)purpose * 0x9E3779B97F4A7C15UL) ^ ((ulong)(uint)index << 32);
        for (var i = 0; i < 4; i++)
            state[i] = SplitMix(ref mix);
    }

    /// <summary>Evenly from 0 to 1, neither included.</summary>
    public double NextUnit() => ((Next() >> 11) + 0.5) / (1UL << 53);

    /// <summary>Standard normal.</summary>
    public double NextNormal() => Normal.InvCDF(0, 1, NextUnit());

    private ulong Next()
    {
        var result = ulong.RotateLeft(state[1] * 5, 7) * 9;
        var t = state[1] << 17;
        state[2] ^= state[0];
        state[3] ^= state[1];
        state[1] ^= state[2];
        state[0] ^= state[3];
        state[2] ^= t;
        state[3] = ulong.RotateLeft(state[3], 45);
        return result;
    }

    private static ulong SplitMix(ref ulong x)
    {
        x += 0x9E3779B97F4A7C15UL;
        var z = x;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
