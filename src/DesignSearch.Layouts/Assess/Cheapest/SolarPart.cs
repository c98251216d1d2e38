using DesignSearch.Season;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Assess.Cheapest;

/// <summary>The numbers of a solar plant.</summary>
internal sealed record SolarPart(TankNumbers Tank, CollectorNumbers Collector, PipeRunNumbers PipeRun, ReleaseNumbers Release)
{
    /// <summary>Those of a plant.</summary>
    public static SolarPart Of(Installation plant) => new(plant.Tank, plant.Collector, plant.PipeRun, plant.Release);

    /// <summary>Another plant with these.</summary>
    public Installation On(Installation plant) => plant with { Tank = Tank, Collector = Collector, PipeRun = PipeRun, Release = Release };
}
