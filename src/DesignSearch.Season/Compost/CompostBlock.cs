using DesignSearch.Season.Assumptions;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using C = DesignSearch.Season.Compost.CompostNumbers;

namespace DesignSearch.Season.Compost;

/// <summary>Compost heaps of some layouts: core and biodegradable solids, explicit in time, for both are slow. Equations in docs/model.md, "Compost heap".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct CompostBlock<T>
    where T : unmanaged, ILane<T>
{
    private const double SecondsPerDay = 86400;
    private const double FadeK = 5;

    /// <summary>Core [°C], solids left [kg], share of this step that the pump ran.</summary>
    public T Core, Solids, Share;

    /// <summary>Sums over the steps of the hour [W].</summary>
    public T SumGrown, SumLost, SumDraw, SumShare;

    private readonly T store, loss, steam, steamFrom, heat, coil, set, rest, ratePerDay, most, heaterFirst, perSecond, stepSeconds;
    private T outside, rotting, power, strength, need, atSet, part;

    public CompostBlock(ReadOnlySpan<C> heaps, ReadOnlySpan<HouseCoefficients> houses, SeasonAssumptions a, double step, double airC)
    {
        store = Pack.Of<T, C>(heaps, x => x.VolumeM3 > 0 ? x.VolumeM3 * a.CompostVolumetricCapacityJPerM3K / step : 1);
        loss = Pack.Of<T, C>(heaps, x => x.VolumeM3 > 0 ? x.LossWPerK : 0);
        steam = Pack.Of<T, C>(heaps, x => x.VolumeM3 * a.CompostSteamWPerM3K);
        steamFrom = T.Of(a.CompostSteamFromC);
        heat = Pack.Of<T, C>(heaps, x => x.HeatJPerKg);
        coil = Pack.Of<T, C>(heaps, x => x.VolumeM3 > 0 ? x.CoilWPerK : 0);
        set = Pack.Of<T, C>(heaps, x => x.SetPointC);
        rest = Pack.Of<T, C>(heaps, x => x.RestBelowC);
        ratePerDay = Pack.Of<T, C>(heaps, x => x.VolumeM3 > 0 ? x.RatePerDay : 0);
        most = T.Of(a.CompostRateFactorMost);
        perSecond = T.Of(1 / SecondsPerDay);
        stepSeconds = T.Of(step);
        Span<double> first = stackalloc double[Pack.Widest];
        for (var i = 0; i < T.Width; i++)
            first[i] = houses[i].HeaterBeforeW(heaps[i].SetPointC);
        heaterFirst = T.Load(first);
        Core = Pack.Of<T, C>(heaps, x => x.VolumeM3 > 0 ? a.CompostStartC : airC);
        Solids = Pack.Of<T, C>(heaps, x => x.VolumeM3 > 0 ? x.DegradableKg : 0);
    }

    /// <summary>Heat in the heap, divided by the step, against 0 °C [W].</summary>
    public readonly T Stored => store * Core;

    /// <summary>Takes one hour's weather and the rate of rotting at the core now, and empties the hour's sums.</summary>
    public void Hour(in HourForcing f)
    {
        (outside, power) = (T.Of(f.OutsideC), T.Of(f.Power));
        Span<double> factor = stackalloc double[Pack.Widest];
        T.Store(Core, factor);
        for (var i = 0; i < T.Width; i++)
            factor[i] = CompostHeap.RateFactor(factor[i]);
        // [1/s]
        rotting = T.Min(T.Load(factor), most) * ratePerDay * perSecond;
        SumGrown = SumLost = SumDraw = SumShare = T.Of(0);
    }

    /// <summary>Offers the heap's heat to the air, which takes what its set point needs; the pump fades out as the core cools.</summary>
    public void Offer(ref HouseBlock<T> house)
    {
        var (one, zero) = (T.Of(1), T.Of(0));
        var (core, goal) = (Core, set);
        var warm = T.Min(core - rest, core - goal - one);
        var conductance = power * coil * T.Min(T.Max(warm * T.Of(1 / FadeK), zero), one);
        var wanted = house.Need(goal) - heaterFirst;
        var full = conductance * (core - goal);
        var duty = T.Min(T.Max(wanted, zero) / T.Max(full, T.Of(1e-9)), one);
        var some = duty * full;
        house.Add(T.IfGreater(wanted, full, conductance, zero), T.IfGreater(wanted, full, conductance * core, some));
        Share = T.IfGreater(conductance, zero, duty, zero);
        (strength, need, atSet, part) = (conductance, wanted, full, some);
    }

    /// <summary>Takes from the heap what the air took, and lets it rot.</summary>
    /// <param name="airC">Air at the end of the step [°C].</param>
    public void Settle(in T airC)
    {
        var (core, solids) = (Core, Solids);
        var draw = T.IfGreater(need, atSet, strength * (core - airC), part);
        var gone = rotting * solids;
        var grown = gone * heat;
        var lost = loss * (core - outside) + steam * T.Max(core - steamFrom, T.Of(0));
        Solids = solids - gone * stepSeconds;
        Core = core + (grown - lost - draw) / store;
        SumGrown += grown;
        SumLost += lost;
        SumDraw += draw;
        SumShare += Share;
    }
}
