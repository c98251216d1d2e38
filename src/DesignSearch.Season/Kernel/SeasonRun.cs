using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Kernel;

/// <summary>Some batches on their way through a winter, with their sources and their books.</summary>
internal readonly ref struct SeasonRun<T>(
    WinterForcing forcing,
    FlowTable table,
    ReadOnlySpan<SourceRunner<T>> sources,
    Span<Batch<T>> batches,
    Span<T> sums,
    OfferTable<T> offers,
    double stepSeconds)
    where T : unmanaged, ILane<T>
{
    public WinterForcing Forcing => forcing;

    public FlowTable Table => table;

    public double StepSeconds => stepSeconds;

    public int Steps { get; } = (int)Math.Round(3600 / stepSeconds);

    public ReadOnlySpan<SourceRunner<T>> Sources { get; } = sources;

    /// <summary>The most that any of the sources does with the doors.</summary>
    public DoorUse Doors { get; } = MostOf(sources);

    public Span<Batch<T>> Batches { get; } = batches;

    /// <summary>What the sources, the release and the heater would give to the air in a step.</summary>
    public OfferTable<T> Offers { get; } = offers;

    // In watts times steps; a store holds its content at the beginning, below 0.
    private Span<T> Sums { get; } = sums;

    /// <summary>Opens the books: what was booked before is forgotten.</summary>
    public void Begin()
    {
        Sums.Clear();
        for (var b = 0; b < Batches.Length; b++)
        {
            ref var batch = ref Batches[b];
            batch.Tally.Begin();
            batch.House.LowestAir = T.Of(1e9);
            foreach (var source in Sources)
                source.Begin(b);
            Stored(b, SumsOf(b)[table.Stored..]);
        }
    }

    /// <summary>Books one hour of one batch.</summary>
    public void Book(int b, in HourForcing f, int hour)
    {
        ref var batch = ref Batches[b];
        var book = new FlowBook<T>(table, SumsOf(b), f.IsCheap, 0, 0);
        batch.House.Book(ref book, f, Steps);
        batch.Loop.Book(ref book);
        foreach (var source in Sources)
            source.Book(b, ref book);
        batch.Tally.Running(batch.House, batch.Loop);
        var mean = batch.House.SumAir * T.Of(1.0 / Steps);
        var plants = mean;
        foreach (var source in Sources)
        {
            if (source.Kind.HoldsPlants)
                plants = source.PlantsMean(b, plants, Steps);
        }

        batch.Tally.Frost(mean, plants, f, hour);
    }

    /// <summary>Lowest of the plants' air at the end of any step of one batch [°C].</summary>
    public T PlantsLowest(int b)
    {
        var lowest = Batches[b].House.LowestAir;
        foreach (var source in Sources)
        {
            if (source.Kind.HoldsPlants)
                lowest = source.PlantsLowest(b, lowest);
        }

        return lowest;
    }

    /// <summary>Sums of one batch in the order of the table.</summary>
    public Span<T> SumsOf(int b) => Sums.Slice(b * table.Count, table.Count);

    /// <summary>What the stores of one batch hold now, over the step [W].</summary>
    public void Stored(int b, Span<T> stores)
    {
        stores[0] = Batches[b].House.Stored;
        stores[1] = Batches[b].Loop.Stored;
        var next = 2;
        foreach (var source in Sources)
        {
            source.Stored(b, stores.Slice(next, source.Kind.Stores.Length));
            next += source.Kind.Stores.Length;
        }
    }

    private static DoorUse MostOf(ReadOnlySpan<SourceRunner<T>> sources)
    {
        var most = DoorUse.None;
        foreach (var source in sources)
            most = source.Kind.Doors > most ? source.Kind.Doors : most;
        return most;
    }
}
