using DesignSearch.Season.Lanes;

namespace DesignSearch.Season.Sources;

/// <summary>What the kernel knows of one system of a layout beyond house and solar loop. A layout has one of a kind at most.</summary>
public abstract record SourceNumbers
{
    /// <summary>False for one that has no size: it is then left out of the layout.</summary>
    public abstract bool IsPresent { get; }

    /// <summary>What it lets out to the air outside for each kelvin that the house is warmer, with the standard films [W/K].</summary>
    public virtual double OutwardWPerK => 0;

    internal abstract SourceKind Kind { get; }

    /// <summary>Makes the blocks of this kind for every batch of a run.</summary>
    internal abstract SourceRunner<T> Open<T>(in SourceStart start, int batches)
        where T : unmanaged, ILane<T>;
}
