using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Solar;
using DesignSearch.Season.Sources;
using N = DesignSearch.Season.Gathering.GatheringNumbers;

namespace DesignSearch.Season.Gathering;

/// <summary>
/// Day heat that some layouts gather into their tanks: implicit to the air, explicit to the tank's top, as the release is. Equations in docs/model.md,
/// "Day heat into the tank".
/// </summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct GatheringBlock<T> : ISourceBlock<GatheringBlock<T>, T>, ITankBlock<T>
    where T : unmanaged, ILane<T>
{
    // The difference controller sets in over it, as in the middle of its own band.
    private const double FadeK = 1;

    private readonly T air, fan, above, start;
    private T power, top, all, part, share, sum, sumFan;

    private GatheringBlock(ReadOnlySpan<N> numbers, double startK)
    {
        air = Pack.Of<T, N>(numbers, n => n.AirWPerK);
        fan = Pack.Of<T, N>(numbers, n => n.FanW);
        above = Pack.Of<T, N>(numbers, n => n.AboveC);
        start = T.Of(startK);
    }

    public static GatheringBlock<T> Make(in SourceStart start, int first)
    {
        var numbers = new N[T.Width];
        for (var i = 0; i < numbers.Length; i++)
            numbers[i] = start.Find<N>(first + i) ?? N.None;
        return new(numbers, start.Forcing.Assumptions[GatheringAssumptions.StartK]);
    }

    public readonly void Begin()
    {
        // Nothing is kept from hour to hour.
    }

    public void Hour(in HourForcing f) => (power, sum, sumFan) = (T.Of(f.Power), T.Of(0), T.Of(0));

    public readonly void Prepare(ref HouseBlock<T> house)
    {
        // It meets the air alone.
    }

    public void See(in LoopBlock<T> loop) => top = loop.TopAhead;

    /// <summary>Takes what would warm the air beyond its set point, before the vents let it out: in full, or for as long as holds the air there.</summary>
    public void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers)
    {
        var (one, zero) = (T.Of(1), T.Of(0));
        var most = air * power * T.Min(T.Max((above - top - start) * T.Of(1 / FadeK), zero), one);
        var blows = T.IfGreater(most, zero, fan * power, zero);
        var surplus = zero - house.Need(above);
        // What the fan heats itself counts against it.
        var cooling = T.Max(most * (above - top) - blows, zero);
        share = T.IfGreater(cooling, zero, T.Min(T.Max(surplus, zero) / T.Max(cooling, T.Of(1e-9)), one), zero);
        all = T.IfGreater(surplus, cooling, T.IfGreater(cooling, zero, most, zero), zero);
        part = T.IfGreater(all, zero, zero, share * most * (above - top));
        blows = share * blows;
        house.Add(all, all * top - part + blows);
        sumFan += blows;
    }

    /// <summary>Gives the tank what the air gave: the water goes the release's way, from top to bottom.</summary>
    public void Charge(ref HouseBlock<T> house)
    {
        var heat = all * (house.Air - top) + part;
        house.ReleaseW -= heat;
        house.ReleaseShare += share;
        sum += heat;
    }

    public readonly void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers)
    {
        // The tank's share is done in Charge.
    }

    public readonly void Book(ref FlowBook<T> book)
    {
        book.Heat(GatheringFlows.Gathered, sum);
        book.Heat(GatheringFlows.FanHeat, sumFan);
        book.Electricity(GatheringFlows.Fan, sumFan);
    }

    public readonly void Stored(ref LaneWriter<Store, T> stores)
    {
        // The tank is the loop's.
    }

    public readonly void Tell(ref LaneWriter<Figure, T> figures)
    {
        // What it gathered stands in the books.
    }

    public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps) => columns.Put(GatheringFlows.GatheredW, sum / T.Of(steps));

    public readonly T PlantsMean(in T house, double steps) => house;

    public readonly T PlantsLowest(in T house) => house;
}
