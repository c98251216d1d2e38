using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;

namespace DesignSearch.Season.Sources;

/// <summary>The blocks of a kind that meets the tank as well.</summary>
internal sealed unsafe class TankRunner<TBlock, T>(SourceKind kind, in SourceStart start, int batches) : BlockRunner<TBlock, T>(kind, start, batches)
    where TBlock : unmanaged, ISourceBlock<TBlock, T>, ITankBlock<T>
    where T : unmanaged, ILane<T>
{
    public override void Offer(Span<Batch<T>> batches, in OfferTable<T> offers)
    {
        for (var b = 0; b < batches.Length; b++)
            Blocks[b].See(batches[b].Loop);
        base.Offer(batches, offers);
    }

    public override void Charge(Span<Batch<T>> batches)
    {
        for (var b = 0; b < batches.Length; b++)
            Blocks[b].Charge(ref batches[b].House);
    }
}
