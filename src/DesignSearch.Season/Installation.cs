using DesignSearch.Season.Barrels;
using DesignSearch.Season.Benches;
using DesignSearch.Season.Compost;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.House;
using DesignSearch.Season.Solar;

namespace DesignSearch.Season;

/// <summary>Every number the season model needs to know of one layout, SI. A component that is absent has no area, no mass or no power.</summary>
/// <param name="House">The greenhouse itself.</param>
/// <param name="Barrels">Water barrels standing in it.</param>
/// <param name="Tank">The tank.</param>
/// <param name="Collector">The collector with its pump and its control.</param>
/// <param name="PipeRun">The pipe between collector and tank, out and back.</param>
/// <param name="Release">What brings the tank's heat into the house.</param>
/// <param name="Heater">The stand-by heater.</param>
public sealed record Installation(
    HouseNumbers House,
    BarrelNumbers Barrels,
    TankNumbers Tank,
    CollectorNumbers Collector,
    PipeRunNumbers PipeRun,
    ReleaseNumbers Release,
    HeaterNumbers Heater)
{
    /// <summary>A compost heap, none by default.</summary>
    public CompostNumbers Compost { get; init; } = CompostNumbers.None;

    /// <summary>A bench under fleece, none by default.</summary>
    public BenchNumbers Bench { get; init; } = BenchNumbers.None;
}
