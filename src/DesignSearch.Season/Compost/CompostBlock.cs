using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Compost;

/// <summary>Compost heaps of some layouts: core and biodegradable solids, explicit in time, for both are slow. Equations in docs/model.md, "Compost heap".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct CompostBlock<T> : ISourceBlock<CompostBlock<T>, T>
    where T : unmanaged, ILane<T>
{
    private const double SecondsPerDay = 86400;

    private readonly CompostTerms<T> terms;
    private readonly T perSecond, stepSeconds;

    // Core [°C], solids left [kg]; sums over the steps of the hour; hours of pumping in steps, lowest core.
    private T core, solids, sumGrown, sumLost, sumDraw, sumShare, pumped, lowest;
    private T outside, rotting, power;

    // Days since the season's start, below 0 in the warm-up; 1 once it is built.
    private T since, stands;

    private CompostBlock(in CompostTerms<T> terms, double step, double warmUpDays)
    {
        this.terms = terms;
        (perSecond, stepSeconds) = (T.Of(1 / SecondsPerDay), T.Of(step));
        (core, solids, since) = (terms.StartC, terms.DegradableKg, T.Of(-warmUpDays));
        Begin();
    }

    public static CompostBlock<T> Make(in SourceStart start, int first)
    {
        Span<CompostTerms<double>> lanes = stackalloc CompostTerms<double>[Pack.Widest];
        for (var i = 0; i < T.Width; i++)
        {
            // Without a heap nothing rots, and nothing is lost or drawn.
            lanes[i] = start.Find<CompostNumbers>(first + i)?.ToTerms(start.Forcing.Assumptions, start.StepSeconds)
                ?? new() { Store = 1, StartC = start.FirstAirC };
        }

        return new(Lift.Of<CompostTerms<double>, CompostTerms<T>, T>(lanes), start.StepSeconds, start.Forcing.Winter.WarmUpHours / 24.0);
    }

    public void Begin() => (pumped, lowest) = (T.Of(0), T.Of(1e9));

    public void Hour(in HourForcing f)
    {
        // Until it is built its stuff lies elsewhere: nothing rots, nothing is lost, nothing is drawn.
        since += T.Of(1.0 / 24);
        stands = T.IfGreater(terms.BuiltDays, T.Of(0), T.IfGreater(since, terms.BuiltDays, T.Of(1), T.Of(0)), T.Of(1));
        (outside, power) = (T.Of(f.OutsideC), stands * T.Of(f.Power));
        // The rate of rotting at the core now [1/s].
        Span<double> factor = stackalloc double[Pack.Widest];
        Span<double> rate = stackalloc double[Pack.Widest];
        T.Store(core, factor);
        T.Store(terms.RatePerDay, rate);
        // Powers are dear, and few layouts of a batch have a heap.
        for (var i = 0; i < T.Width; i++)
            factor[i] = rate[i] > 0 ? CompostHeap.RateFactor(factor[i]) : 0;
        rotting = T.Min(T.Load(factor), terms.RateFactorMost) * terms.RatePerDay * perSecond * stands;
        sumGrown = sumLost = sumDraw = sumShare = T.Of(0);
    }

    public readonly void Prepare(ref HouseBlock<T> house)
    {
        // The heap stands outdoors.
    }

    /// <summary>Heat through the coil; the pump fades out as the core cools, and the coil gives nothing to air that is nearly as warm.</summary>
    public readonly void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers)
    {
        var (one, zero) = (T.Of(1), T.Of(0));
        var warm = T.Min(core - terms.RestBelowC, core - terms.SetC - terms.AboveSetK);
        var conductance = power * terms.Coil * T.Min(T.Max(warm * terms.PerFadeK, zero), one);
        ref var offer = ref offers[0];
        (offer.SetC, offer.Source, offer.Conductance) = (terms.SetC, conductance * core, conductance);
    }

    /// <summary>Takes from the heap what the air took, and lets it rot.</summary>
    public void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers)
    {
        var (warmth, left) = (core, solids);
        var draw = offers[0].Given(house.Air);
        var gone = rotting * left;
        var grown = gone * terms.HeatJPerKg;
        var lost = stands * (terms.Loss * (warmth - outside) + terms.Steam * T.Max(warmth - terms.SteamFromC, T.Of(0)));
        solids = left - gone * stepSeconds;
        core = warmth + (grown - lost - draw) / terms.Store;
        sumGrown += grown;
        sumLost += lost;
        sumDraw += draw;
        sumShare += offers[0].Duty;
    }

    public void Book(ref FlowBook<T> book)
    {
        book.Heat(CompostFlows.Rotting, sumGrown);
        book.Heat(CompostFlows.Loss, sumLost);
        book.Heat(CompostFlows.Draw, sumDraw);
        book.Electricity(CompostFlows.Pump, sumShare * terms.PumpW);
        pumped += sumShare;
        lowest = T.Min(lowest, core);
    }

    public readonly void Stored(ref LaneWriter<Store, T> stores) => stores.Put(CompostFlows.Heap, terms.Store * core);

    public readonly void Tell(ref LaneWriter<Figure, T> figures)
    {
        figures.Put(CompostFlows.PumpHours, pumped * stepSeconds / T.Of(3600));
        figures.Put(CompostFlows.LowestCore, lowest);
        figures.Put(CompostFlows.SolidsLeft, solids / terms.DegradableKg);
    }

    public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps)
    {
        columns.Put(CompostFlows.Core, core);
        columns.Put(CompostFlows.DrawW, sumDraw / T.Of(steps));
    }

    public readonly T PlantsMean(in T house, double steps) => house;

    public readonly T PlantsLowest(in T house) => house;
}
