using DesignSearch.Season.Flows;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Season.Sources;

/// <summary>What one kind of source adds to the books, to the outcome and to the hourly table.</summary>
/// <param name="id">Small letters and hyphens, of no other kind.</param>
/// <param name="rank">Its place among the sources of a layout, the smallest first: so a layout's sources stand in the same order whoever lists them.</param>
internal sealed class SourceKind(string id, int rank) : IComparable<SourceKind>
{
    public string Id => id;

    public Flow[] Flows { get; init; } = [];

    public Use[] Uses { get; init; } = [];

    public Store[] Stores { get; init; } = [];

    public Figure[] Figures { get; init; } = [];

    public HourColumn[] Columns { get; init; } = [];

    /// <summary>Offers that it makes to the air in each step.</summary>
    public int Offers { get; init; }

    public DoorUse Doors { get; init; }

    /// <summary>True when it meets the tank; see <see cref="ITankBlock{T}"/>.</summary>
    public bool UsesTank { get; init; }

    /// <summary>True when the plants stand in it, so that its air is theirs.</summary>
    public bool HoldsPlants { get; init; }

    private int Rank => rank;

    public int CompareTo(SourceKind? other) =>
        other is null ? 1 : rank != other.Rank ? rank.CompareTo(other.Rank) : string.CompareOrdinal(id, other.Id);
}
