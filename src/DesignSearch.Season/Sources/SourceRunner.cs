using DesignSearch.Season.Flows;
using DesignSearch.Season.Kernel;
using DesignSearch.Season.Lanes;
using DesignSearch.Season.Offers;

namespace DesignSearch.Season.Sources;

/// <summary>All blocks of one kind of source in a run: one call a part of the step, however many batches there are.</summary>
internal abstract class SourceRunner<T>(SourceKind kind) : IDisposable
    where T : unmanaged, ILane<T>
{
    public SourceKind Kind => kind;

    /// <summary>Where its offers begin among those of a batch.</summary>
    protected int FirstOffer { get; private set; }

    /// <summary>One runner for each kind that any layout of a run has, in the order of their ranks; none where there are no sources.</summary>
    public static SourceRunner<T>[] Open(ReadOnlySpan<LayoutCase> cases, in SourceStart start, int batches)
    {
        List<SourceNumbers>? first = null;
        foreach (var layout in cases)
        {
            var sources = layout.Installation.Sources;
            for (var i = 0; i < sources.Count; i++)
            {
                var source = sources[i];
                if (first is null || !first.Exists(s => s.Kind == source.Kind))
                    (first ??= []).Add(source);
            }
        }

        if (first is null)
            return [];
        first.Sort((a, b) => a.Kind.CompareTo(b.Kind));
        var runners = new SourceRunner<T>[first.Count];
        for (var i = 0; i < runners.Length; i++)
        {
            runners[i] = first[i].Open<T>(start, batches);
            runners[i].FirstOffer = i == 0 ? 0 : runners[i - 1].FirstOffer + runners[i - 1].Kind.Offers;
        }

        return runners;
    }

    public abstract void Begin(int batch);

    public abstract void Hour(in HourForcing f);

    public abstract void Prepare(Span<Batch<T>> batches);

    public abstract void Offer(Span<Batch<T>> batches, in OfferTable<T> offers);

    /// <summary>What goes between the air and the tank, once the air is known; nothing for most.</summary>
    public virtual void Charge(Span<Batch<T>> batches)
    {
        // Most kinds never meet the tank.
    }

    public abstract void Settle(Span<Batch<T>> batches, in OfferTable<T> offers);

    public abstract void Book(int batch, ref FlowBook<T> book);

    public abstract void Stored(int batch, Span<T> stores);

    public abstract void Tell(int batch, Span<T> figures);

    public abstract void Row(int batch, Span<T> columns, double steps);

    public abstract T PlantsMean(int batch, in T house, double steps);

    public abstract T PlantsLowest(int batch, in T house);

    public abstract void Dispose();
}
