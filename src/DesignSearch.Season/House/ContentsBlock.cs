using System.Runtime.CompilerServices;
using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.House;

/// <summary>What stands in some houses: eliminated first, so that air and inner surface see each other through it. Equations in docs/model.md, "House".</summary>
/// <param name="terms">The houses.</param>
/// <param name="startC">Where it begins [°C].</param>
internal struct ContentsBlock<T>(in HouseTerms<T> terms, in T startC)
    where T : unmanaged, ILane<T>
{
    /// <summary>Its temperature [°C].</summary>
    public T Now = startC;

    /// <summary>What it adds to the rows of inner surface and air, and couples them by [W/K].</summary>
    public readonly T InnerHold = terms.ContentsInner - terms.ContentsInner * terms.ContentsInner * Inverse(terms),
        AirHold = terms.ContentsAir - terms.ContentsAir * terms.ContentsAir * Inverse(terms),
        InnerAir = terms.ContentsInner * terms.ContentsAir * Inverse(terms);

    private readonly T store = terms.ContentsStore, toInner = terms.ContentsInner, toAir = terms.ContentsAir, inverse = Inverse(terms);

    private T rest;

    /// <summary>Heat in it, divided by the step, against 0 °C [W].</summary>
    public readonly T Stored => store * Now;

    /// <summary>Begins a step.</summary>
    /// <param name="sunW">Sun that falls on it [W].</param>
    /// <param name="toInnerW">What it gives to the inner surface whatever that is [W].</param>
    /// <param name="toAirW">Likewise to the air [W].</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Eliminate(in T sunW, out T toInnerW, out T toAirW)
    {
        rest = (store * Now + sunW) * inverse;
        (toInnerW, toAirW) = (toInner * rest, toAir * rest);
    }

    /// <summary>Ends it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Settle(in T innerC, in T airC) => Now = rest + (toInner * innerC + toAir * airC) * inverse;

    private static T Inverse(in HouseTerms<T> terms) => T.Of(1) / (terms.ContentsStore + terms.ContentsInner + terms.ContentsAir);
}
