using DesignSearch.Files;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Parts.DayStore;

/// <summary>
/// The two chambers at the ends of a day-heat store, as a set: pipes fall to the lower one, which has a drain and a lid to look in.
/// </summary>
/// <param name="Info">What every part has: name, price, life.</param>
public sealed record EarthHeader(PartInfo Info) : Part(Info)
{
    /// <summary>Its file in a catalogue.</summary>
    public static PartKind Definition { get; } = new("earth-header", "earth-headers.csv", Read);

    /// <inheritdoc/>
    public override PartKind Kind => Definition;

    /// <summary>Pipes that it takes at most, from 1 to 60.</summary>
    public required int PipesMost { get; init; }

    internal static EarthHeader Read(ICsvCells cells) => new(PartInfo.Read(cells, [PartUnit.Set]))
    {
        PipesMost = cells.Whole("pipes_most", 1, 60, "Pipes that it takes at most"),
    };
}
