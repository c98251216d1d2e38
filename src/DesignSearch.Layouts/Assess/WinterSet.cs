using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;
using DesignSearch.Files;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season.Glass;
using DesignSearch.Season.House;
using DesignSearch.Season.Kernel;

namespace DesignSearch.Layouts.Assess;

/// <summary>The winters of a scenario, made ready for the season model once and shared by all layouts.</summary>
public sealed class WinterSet
{
    private const long PlaneBytes = 400_000_000;

    private WinterSet(IReadOnlyList<(Winter Winter, double Weight, WinterForcing Forcing)> winters, PlaneCache planes, PlaneCache otherSky) =>
        (Winters, Planes, OtherSky, LowestOutsideC) = (winters, planes, otherSky, winters.Min(w => w.Winter.AirC.Min()));

    /// <summary>The winters with their weights, which add to 1.</summary>
    public IReadOnlyList<(Winter Winter, double Weight, WinterForcing Forcing)> Winters { get; }

    /// <summary>Plane irradiance by winter and mount.</summary>
    public PlaneCache Planes { get; }

    /// <summary>The same by another model of the sky: a second opinion, never used for results.</summary>
    public PlaneCache OtherSky { get; }

    /// <summary>Lowest outdoor hour mean of all winters [°C].</summary>
    public double LowestOutsideC { get; }

    /// <summary>Makes the winters a scenario asks for.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="asRecorded">True to take only what the weather file holds, no hard winter made from it.</param>
    /// <exception cref="InputException">The weather file holds no whole season.</exception>
    public static WinterSet Make(Scenario scenario, bool asRecorded = false) => Of(scenario, DesignWinters.Of(scenario, asRecorded));

    /// <summary>Makes given winters of a scenario's place ready.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="winters">The winters with their weights, which add to 1.</param>
    internal static WinterSet Of(Scenario scenario, IEnumerable<(Winter Winter, double Weight)> winters)
    {
        var horizon = scenario.Site.Horizon;
        var planes = new PlaneCache(PlaneBytes, horizon);
        var (panes, shaded) = (HousePanes.Of(scenario.Greenhouse, horizon), new Dictionary<HorizonProfile, PlaneCache>());
        PlaneIrradiance Plane(Winter winter, Mount mount, HorizonProfile? behind)
        {
            if (behind is null || behind == horizon)
                return planes.Get(winter, mount);
            if (!shaded.TryGetValue(behind, out var own))
                shaded.Add(behind, own = new(1, behind));
            return own.Get(winter, mount);
        }

        var prepared = winters
            .Select(w => (
                w.Winter, w.Weight,
                WinterForcing.Prepare(
                    w.Winter,
                    HouseSun.TransmittedW(w.Winter, panes, Plane, scenario.Assumptions[HouseAssumptions.SnowLightShare]),
                    scenario.Assumptions,
                    scenario.Money.Night is { } night ? night.Holds : null,
                    scenario.Greenhouse.FloorBelowM)))
            .ToList();
        return new WinterSet(prepared, planes, new PlaneCache(PlaneBytes / 8, horizon, SkySplit.HayDavies));
    }
}
