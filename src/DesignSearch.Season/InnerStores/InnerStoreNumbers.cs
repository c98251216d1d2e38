using DesignSearch.Season.Sources;

namespace DesignSearch.Season.InnerStores;

/// <summary>What stands in a house and takes heat from its air and gives it back over hours: pots, beds, benches, frame. As one log of the house shows it.</summary>
/// <param name="CapacityJPerK">Heat that it stores [J/K]; 0 without one.</param>
/// <param name="CouplingWPerK">What goes between it and the air [W/K].</param>
public sealed record InnerStoreNumbers(double CapacityJPerK, double CouplingWPerK) : SourceNumbers
{
    /// <inheritdoc/>
    public override bool IsPresent => CapacityJPerK > 0 && CouplingWPerK > 0;

    internal static InnerStoreNumbers None { get; } = new(0, 0);

    internal override SourceKind Kind => InnerStoreFlows.Kind;

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) => new BlockRunner<InnerStoreBlock<T>, T>(Kind, start, batches);
}
