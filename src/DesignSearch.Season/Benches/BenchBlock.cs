using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Benches;

/// <summary>Benches under fleece of some layouts: to the air implicit, to the cover explicit, for a bench is slow. Equations in docs/model.md, "Bench under fleece".</summary>
/// <remarks>Only lanes as fields, so that every one stays aligned.</remarks>
internal struct BenchBlock<T> : ISourceBlock<BenchBlock<T>, T>
    where T : unmanaged, ILane<T>
{
    private readonly BenchTerms<T> terms;
    private T inverse, day, toAirNow, toCoverNow;

    // Air and pots under the fleece [°C]; sums over the steps of the hour; lowest end of a step so far [°C].
    private T bench, sumHeat, sumBench, sumGiven, lowest;
    private T mostNow, toCover, heat, rest;

    private BenchBlock(in BenchTerms<T> terms)
    {
        this.terms = terms;
        bench = terms.StartC;
        Begin();
    }

    public static BenchBlock<T> Make(in SourceStart start, int first)
    {
        Span<BenchTerms<double>> lanes = stackalloc BenchTerms<double>[Pack.Widest];
        for (var i = 0; i < T.Width; i++)
            lanes[i] = start.Find<BenchNumbers>(first + i)?.ToTerms(start.Forcing.Assumptions, start.StepSeconds, start.FirstAirC) ?? new() { Store = 1 };
        return new(Lift.Of<BenchTerms<double>, BenchTerms<T>, T>(lanes));
    }

    public void Begin() => lowest = T.Of(1e9);

    public void Hour(in HourForcing f)
    {
        mostNow = terms.PowerW * T.Of(f.Power);
        day = T.Of(1 - f.Dark);
        sumHeat = sumBench = sumGiven = T.Of(0);
    }

    /// <summary>What the fleece radiates to the inside of the cover, by the temperatures at the beginning of the step.</summary>
    public void Prepare(ref HouseBlock<T> house)
    {
        // Someone opens the fleece while the sun is up and the house is warm.
        var open = T.Of(1) + T.IfGreater(house.Air, terms.OpenAboveC, day, T.Of(0)) * (terms.OpenFactor - T.Of(1));
        (toAirNow, toCoverNow) = (terms.ToAir * open, terms.ToCover * open);
        inverse = T.Of(1) / (terms.Store + toAirNow);
        var given = toCoverNow * (bench - house.Inner);
        house.GiveToInner(given);
        toCover = given;
    }

    /// <summary>Heats by the air at the beginning of the step, which moves by a few tenths in it, and joins the bench to the row of the air.</summary>
    public void Offer(ref HouseBlock<T> house, Span<Offer<T>> offers)
    {
        var (store, toAir) = (terms.Store, toAirNow);
        var kept = store * bench - toCover;
        var given = T.Min(T.Max(terms.SetC * (store + toAir) - kept - toAir * house.Air, T.Of(0)), mostNow);
        var alone = (kept + given) * inverse;
        house.Add(toAir - toAir * toAir * inverse, toAir * alone);
        (heat, rest) = (given, alone);
    }

    public void Settle(in HouseBlock<T> house, ReadOnlySpan<Offer<T>> offers)
    {
        var (air, toAir) = (house.Air, toAirNow);
        var now = rest + toAir * inverse * air;
        bench = now;
        sumHeat += heat;
        sumBench += now;
        sumGiven += toAir * (now - air) + toCover;
        lowest = T.Min(lowest, now);
    }

    public readonly void Book(ref FlowBook<T> book)
    {
        book.Heat(BenchFlows.Heat, sumHeat);
        book.Heat(BenchFlows.Fleece, sumGiven);
        book.Electricity(BenchFlows.Heater, sumHeat);
    }

    public readonly void Stored(ref LaneWriter<Store, T> stores) => stores.Put(BenchFlows.Bench, terms.Store * bench);

    public readonly void Tell(ref LaneWriter<Figure, T> figures)
    {
        // What it does stands in the plants' air and in the books.
    }

    public readonly void Row(ref LaneWriter<HourColumn, T> columns, double steps)
    {
        columns.Put(BenchFlows.Air, sumBench * T.Of(1 / steps));
        columns.Put(BenchFlows.HeatW, sumHeat / T.Of(steps));
    }

    public readonly T PlantsMean(in T house, double steps) => T.IfGreater(terms.IsPresent, T.Of(0), sumBench * T.Of(1 / steps), house);

    public readonly T PlantsLowest(in T house) => T.IfGreater(terms.IsPresent, T.Of(0), lowest, house);
}
