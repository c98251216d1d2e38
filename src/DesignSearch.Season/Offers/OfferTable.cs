using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Offers;

/// <summary>The offers of all batches of a run: those of the sources in their order, then release and heater.</summary>
/// <param name="all">Room for all of them.</param>
/// <param name="each">Offers of one batch.</param>
internal readonly ref struct OfferTable<T>(Span<Offer<T>> all, int each)
    where T : unmanaged, ILane<T>
{
    private readonly Span<Offer<T>> all = all;

    /// <summary>Offers of one batch.</summary>
    public Span<Offer<T>> Of(int batch) => all.Slice(batch * each, each);

    /// <summary>Some of the offers of one batch.</summary>
    public Span<Offer<T>> Of(int batch, int first, int count) => all.Slice(batch * each + first, count);
}
