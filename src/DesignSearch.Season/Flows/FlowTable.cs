using System.Collections.Concurrent;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Flows;

/// <summary>What is summed over a season and where it stands in the sums: flows, what ran back of them, uses, their cheap part, stores.</summary>
internal sealed class FlowTable(Flow[] flows, Use[] uses, Store[] stores) : IEquatable<FlowTable>
{
    private readonly ConcurrentDictionary<SourceKind, FlowTable> longer = [];

    /// <summary>House and solar loop alone.</summary>
    public static FlowTable Plain { get; } = new([.. HouseFlows.Flows, .. SolarFlows.Flows], [.. HouseFlows.Uses, .. SolarFlows.Uses], [HouseFlows.House, SolarFlows.Loop]);

    public Flow[] Flows => flows;

    public Use[] Uses => uses;

    public Store[] Stores => stores;

    /// <summary>First of what ran back; the flows themselves begin at 0.</summary>
    public int Back => flows.Length;

    public int Used => 2 * flows.Length;

    public int Cheap => Used + uses.Length;

    public int Stored => Cheap + uses.Length;

    public int Count => Stored + stores.Length;

    /// <summary>The table of a plant that has one more source; made once, so that a run makes none.</summary>
    public FlowTable With(SourceKind kind) =>
        longer.GetOrAdd(kind, (k, self) => new([.. self.Flows, .. k.Flows], [.. self.Uses, .. k.Uses], [.. self.Stores, .. k.Stores]), this);

    /// <summary>The table of a plant with some sources.</summary>
    public static FlowTable Of(IReadOnlyList<SourceNumbers> sources)
    {
        var table = Plain;
        for (var i = 0; i < sources.Count; i++)
            table = table.With(sources[i].Kind);
        return table;
    }

    public bool IsOutside(string account)
    {
        foreach (var store in stores)
        {
            if (store.Id == account)
                return false;
        }

        return true;
    }

    public bool Equals(FlowTable? other) => other is not null
        && (ReferenceEquals(this, other) || (flows.AsSpan().SequenceEqual(other.Flows) && uses.AsSpan().SequenceEqual(other.Uses) && stores.AsSpan().SequenceEqual(other.Stores)));

    public override bool Equals(object? obj) => Equals(obj as FlowTable);

    public override int GetHashCode() => HashCode.Combine(flows.Length, uses.Length, stores.Length);
}
