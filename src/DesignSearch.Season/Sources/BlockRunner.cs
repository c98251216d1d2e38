using System.Runtime.InteropServices;
using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;

namespace DesignSearch.Season.Sources;

/// <summary>Holds the blocks in memory aligned to the lanes and calls each of them directly.</summary>
internal sealed unsafe class BlockRunner<TBlock, T> : SourceRunner<T>
    where TBlock : unmanaged, ISourceBlock<TBlock, T>
    where T : unmanaged, ILane<T>
{
    private readonly TBlock* blocks;
    private readonly int batchCount, offerCount;

    public BlockRunner(SourceKind kind, in SourceStart start, int batches)
        : base(kind)
    {
        (batchCount, offerCount) = (batches, kind.Offers);
        blocks = (TBlock*)NativeMemory.AlignedAlloc((nuint)(sizeof(TBlock) * batches), Pack.CacheLine);
        for (var b = 0; b < batches; b++)
            blocks[b] = TBlock.Make(start, b * T.Width);
    }

    public override void Begin(int batch) => blocks[batch].Begin();

    public override void Hour(in HourForcing f)
    {
        for (var b = 0; b < batchCount; b++)
            blocks[b].Hour(f);
    }

    public override void Prepare(Span<Batch<T>> batches)
    {
        for (var b = 0; b < batches.Length; b++)
            blocks[b].Prepare(ref batches[b].House);
    }

    public override void Offer(Span<Batch<T>> batches, in OfferTable<T> offers)
    {
        for (var b = 0; b < batches.Length; b++)
            blocks[b].Offer(ref batches[b].House, offerCount > 0 ? offers.Of(b, FirstOffer, offerCount) : default);
    }

    public override void Settle(Span<Batch<T>> batches, in OfferTable<T> offers)
    {
        for (var b = 0; b < batches.Length; b++)
            blocks[b].Settle(batches[b].House, offerCount > 0 ? offers.Of(b, FirstOffer, offerCount) : default);
    }

    public override void Book(int batch, ref FlowBook<T> book) => blocks[batch].Book(ref book);

    public override void Stored(int batch, Span<T> stores)
    {
        var writer = new LaneWriter<Store, T>(Kind.Stores, stores);
        blocks[batch].Stored(ref writer);
    }

    public override void Tell(int batch, Span<T> figures)
    {
        var writer = new LaneWriter<Figure, T>(Kind.Figures, figures);
        blocks[batch].Tell(ref writer);
    }

    public override void Row(int batch, Span<T> columns, double steps)
    {
        var writer = new LaneWriter<HourColumn, T>(Kind.Columns, columns);
        blocks[batch].Row(ref writer, steps);
    }

    public override T PlantsMean(int batch, in T house, double steps) => blocks[batch].PlantsMean(house, steps);

    public override T PlantsLowest(int batch, in T house) => blocks[batch].PlantsLowest(house);

    public override void Dispose() => NativeMemory.AlignedFree(blocks);
}
