using DesignSearch.Season.Flows;
using DesignSearch.Season.Sources;

namespace DesignSearch.Season.InnerStores;

/// <summary>What an inner store adds to the books.</summary>
public static class InnerStoreFlows
{
    /// <summary>The store.</summary>
    public static Store Inner { get; } = new("inner-store", "pots, beds and frame");

    /// <summary>Between it and the air of the house.</summary>
    public static Flow ToAir { get; } = new("inner-store", Inner.Id, Accounts.House, "out of pots, beds and frame", "into pots, beds and frame");

    internal static SourceKind Kind { get; } = new("inner-store", 70)
    {
        Flows = [ToAir],
        Stores = [Inner],
    };
}
