using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using C = DesignSearch.Season.Benches.BenchCoefficients;

namespace DesignSearch.Season.Benches;

/// <summary>Benches under fleece of some layouts: to the air implicit, to the cover explicit, for a bench is slow. Equations in docs/model.md, "Bench under fleece".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct BenchBlock<T>
    where T : unmanaged, ILane<T>
{
    /// <summary>Air and pots under the fleece [°C], electric heat of this step [W].</summary>
    public T Bench, HeatW;

    /// <summary>Sums over the steps of the hour: heat [W], temperature at the ends of the steps [°C]; the lowest end of a step so far [°C].</summary>
    public T SumHeat, SumBench, Lowest;

    private readonly T present, store, toAir, toCover, most, set, inverse;
    private T mostNow, shed, rest;

    public BenchBlock(ReadOnlySpan<C> c, double step, double airC)
    {
        present = Pack.Of<T, C>(c, x => x.Is);
        store = Pack.Of<T, C>(c, x => x.Store) * T.Of(1 / step);
        toAir = Pack.Of<T, C>(c, x => x.ToAir);
        toCover = Pack.Of<T, C>(c, x => x.ToCover);
        most = Pack.Of<T, C>(c, x => x.PowerW);
        set = Pack.Of<T, C>(c, x => x.SetPointC);
        inverse = T.Of(1) / (store + toAir);
        Bench = Pack.Of<T, C>(c, x => x.Is > 0 ? airC : 0);
    }

    /// <summary>Heat in the bench, divided by the step, against 0 °C [W].</summary>
    public readonly T Stored => store * Bench;

    /// <summary>Takes one hour's mains, and empties the hour's sums.</summary>
    public void Hour(in HourForcing f)
    {
        mostNow = most * T.Of(f.Power);
        SumHeat = SumBench = T.Of(0);
    }

    /// <summary>What the fleece radiates to the inside of the cover, before the cover is eliminated.</summary>
    public void Shed(ref HouseBlock<T> house)
    {
        var given = toCover * (Bench - house.Inner);
        (shed, house.InnerIn) = (given, given);
    }

    /// <summary>Heats by the air at the beginning of the step, which moves by a few tenths in it, and joins the bench to the row of the air.</summary>
    public void Offer(ref HouseBlock<T> house)
    {
        var kept = store * Bench - shed;
        var given = T.Min(T.Max(set * (store + toAir) - kept - toAir * house.Air, T.Of(0)), mostNow);
        var alone = (kept + given) * inverse;
        house.Add(toAir - toAir * toAir * inverse, toAir * alone);
        (HeatW, rest) = (given, alone);
    }

    /// <summary>The bench at the end of the step.</summary>
    /// <param name="airC">Air of the house then [°C].</param>
    public void Settle(in T airC)
    {
        var bench = rest + toAir * inverse * airC;
        Bench = bench;
        SumHeat += HeatW;
        SumBench += bench;
        Lowest = T.Min(Lowest, bench);
    }

    /// <summary>The plants' air: that under the fleece where there is a bench, else the house's [°C].</summary>
    public readonly T Plants(in T houseC, in T benchC) => T.IfGreater(present, T.Of(0), benchC, houseC);
}
