using System.Runtime.InteropServices;
using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;

namespace DesignSearch.Season.Sources;

/// <summary>Holds the blocks in memory aligned to the lanes and calls each of them directly.</summary>
internal unsafe class BlockRunner<TBlock, T> : SourceRunner<T>
    where TBlock : unmanaged, ISourceBlock<TBlock, T>
    where T : unmanaged, ILane<T>
{
    private readonly int batchCount, offerCount;

    public BlockRunner(SourceKind kind, in SourceStart start, int batches)
        : base(kind)
    {
        (batchCount, offerCount) = (batches, kind.Offers);
        var blocks = (TBlock*)NativeMemory.AlignedAlloc((nuint)(sizeof(TBlock) * batches), Pack.CacheLine);
        for (var b = 0; b < batches; b++)
            blocks[b] = TBlock.Make(start, b * T.Width);
        Blocks = blocks;
    }

    protected TBlock* Blocks { get; }

    public override void Begin(int batch) => Blocks[batch].Begin();

    public override void Hour(in HourForcing f)
    {
        for (var b = 0; b < batchCount; b++)
            Blocks[b].Hour(f);
    }

    public override void Prepare(Span<Batch<T>> batches)
    {
        for (var b = 0; b < batches.Length; b++)
            Blocks[b].Prepare(ref batches[b].House);
    }

    public override void Offer(Span<Batch<T>> batches, in OfferTable<T> offers)
    {
        for (var b = 0; b < batches.Length; b++)
            Blocks[b].Offer(ref batches[b].House, offerCount > 0 ? offers.Of(b, FirstOffer, offerCount) : default);
    }

    public override void Settle(Span<Batch<T>> batches, in OfferTable<T> offers)
    {
        for (var b = 0; b < batches.Length; b++)
            Blocks[b].Settle(batches[b].House, offerCount > 0 ? offers.Of(b, FirstOffer, offerCount) : default);
    }

    public override void Book(int batch, ref FlowBook<T> book) => Blocks[batch].Book(ref book);

    public override void Stored(int batch, Span<T> stores)
    {
        var writer = new LaneWriter<Store, T>(Kind.Stores, stores);
        Blocks[batch].Stored(ref writer);
    }

    public override void Tell(int batch, Span<T> figures)
    {
        var writer = new LaneWriter<Figure, T>(Kind.Figures, figures);
        Blocks[batch].Tell(ref writer);
    }

    public override void Row(int batch, Span<T> columns, double steps)
    {
        var writer = new LaneWriter<HourColumn, T>(Kind.Columns, columns);
        Blocks[batch].Row(ref writer, steps);
    }

    public override T PlantsMean(int batch, in T house, double steps) => Blocks[batch].PlantsMean(house, steps);

    public override T PlantsLowest(int batch, in T house) => Blocks[batch].PlantsLowest(house);

    public override void Dispose() => NativeMemory.AlignedFree(Blocks);
}
