using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;
using N = DesignSearch.Season.InnerStores.InnerStoreNumbers;

namespace DesignSearch.Season.InnerStores;

/// <summary>Inner stores of some houses: one node that meets the air alone, taken implicitly. Equations in docs/model.md, "Inner store".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct InnerStoreBlock<T> : ISourceBlock<InnerStoreBlock<T>, T>
    where T : unmanaged, ILane<T>
{
    // Store over the step, coupling, what of both reaches the air, one over their sum; a lane without one has a store of one and no coupling.
    private readonly T store, coupling, through, inverse;
    private T inner, sum;

    private InnerStoreBlock(ReadOnlySpan<N> stores, double step, double startC)
    {
        store = Pack.Of<T, N>(stores, n => n.CapacityJPerK > 0 ? n.CapacityJPerK / step : 1);
        coupling = Pack.Of<T, N>(stores, n => n.CapacityJPerK > 0 ? n.CouplingWPerK : 0);
        inverse = T.Of(1) / (store + coupling);
        through = coupling * store * inverse;
        inner = T.Of(startC);
        sum = T.Of(0);
    }

    public static InnerStoreBlock<T> Make(in SourceStart start, int first)
    {
        var stores = new N[T.Width];
        for (var i = 0; i < stores.Length; i++)
            stores[i] = start.Find<N>(first + i) ?? N.None;
        return new(stores, start.StepSeconds, start.FirstAirC);
    }

    public readonly void Begin()
    {
        // What it holds after the warm-up is what the season begins with.
    }

    public void Hour(in HourForcing f) => sum = T.Of(0);

    public readonly void Prepare(ref HouseBlock<T> house)
    {
        // It meets the air alone.
    }

    public readonly void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers) => house.Add(through, through * inner);

    public void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers)
    {
        inner = (store * inner + coupling * house.Air) * inverse;
        sum += coupling * (inner - house.Air);
    }

    public readonly void Book(ref FlowBook<T> book) => book.Heat(InnerStoreFlows.ToAir, sum);

    public readonly void Stored(ref LaneWriter<Store, T> stores) => stores.Put(InnerStoreFlows.Inner, store * inner);

    public readonly void Tell(ref LaneWriter<Figure, T> figures)
    {
        // What it gave stands in the books.
    }

    public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps)
    {
        // It has no column of its own.
    }

    public readonly T PlantsMean(in T house, double steps) => house;

    public readonly T PlantsLowest(in T house) => house;
}
