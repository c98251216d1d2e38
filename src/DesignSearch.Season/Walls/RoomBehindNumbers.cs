using DesignSearch.Season.Sources;

namespace DesignSearch.Season.Walls;

/// <summary>A heated room behind the back wall, held at one temperature whatever the house does.</summary>
/// <param name="RoomC">Its air [°C].</param>
public sealed record RoomBehindNumbers(double RoomC) : SourceNumbers
{
    /// <inheritdoc/>
    public override bool IsPresent => true;

    internal override SourceKind Kind => WallFlows.RoomKind;

    internal override SourceRunner<T> Open<T>(in SourceStart start, int batches) => new BlockRunner<RoomBehindBlock<T>, T>(Kind, start, batches);
}
