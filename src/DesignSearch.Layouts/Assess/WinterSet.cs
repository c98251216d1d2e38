using DesignSearch.Climate.Plane;
using DesignSearch.Climate.Sun;
using DesignSearch.Climate.Winters;
using DesignSearch.Files;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season.Glass;
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
    public static WinterSet Make(Scenario scenario, bool asRecorded = false) => Of(scenario, Wanted(scenario, asRecorded));

    /// <summary>Makes given winters of a scenario's place ready.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="winters">The winters with their weights, which add to 1.</param>
    internal static WinterSet Of(Scenario scenario, IEnumerable<(Winter Winter, double Weight)> winters)
    {
        var horizon = scenario.Site.HorizonDeg.Count > 0 ? new HorizonProfile([.. scenario.Site.HorizonDeg.Select((h, i) => (45.0 * i, h))]) : null;
        var planes = new PlaneCache(PlaneBytes, horizon);
        var houseFacets = scenario.Greenhouse.Facets;
        var glazing = new Glazing(scenario.Greenhouse.CoverLayers, scenario.Greenhouse.CoverLight);
        var prepared = winters
            .Select(w => (
                w.Winter, w.Weight,
                WinterForcing.Prepare(
                    w.Winter,
                    HouseSun.TransmittedW(w.Winter, houseFacets, glazing, planes.Get),
                    scenario.Assumptions,
                    scenario.Money.Night is { } night ? night.Holds : null)))
            .ToList();
        return new WinterSet(prepared, planes, new PlaneCache(PlaneBytes / 8, horizon, SkySplit.HayDavies));
    }

    /// <summary>Winters drawn by chance from the scenario's weather, each with a lowest night of its own.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="count">How many.</param>
    /// <param name="seed">Any number.</param>
    internal static IReadOnlyList<Winter> Drawn(Scenario scenario, int count, ulong seed) => scenario.Climate.Monthly is { } monthly
        ? WinterMaker.Drawn(monthly, scenario.Season, count, seed, Options(scenario))
        : WinterMaker.Drawn(WinterMaker.FromRecord(scenario.Climate.Record!, scenario.Season, Options(scenario)), count, seed, Options(scenario));

    private static IEnumerable<(Winter Winter, double Weight)> Wanted(Scenario scenario, bool asRecorded)
    {
        var (climate, options) = (scenario.Climate, Options(scenario));
        var typical = climate.Monthly is { } monthly
            ? [WinterMaker.Synthetic(monthly, scenario.Season, WinterKind.Typical, climate.Seed, options)]
            : WinterMaker.FromRecord(climate.Record!, scenario.Season, options);
        if (typical.Count == 0)
            throw new InputException(new InputFault(climate.Record!.Source, 0, 0, climate.Record.Period, WinterWords.WholeSeason));
        return asRecorded ? Shared(typical, 1) : scenario.Winters.SelectMany(wish => Shared(Wished(wish, scenario, typical, options), wish.Weight));
    }

    private static WinterOptions Options(Scenario scenario) => new()
    {
        GroundReflectance = scenario.Assumptions.GroundReflectance,
        SnowReflectance = scenario.Assumptions.SnowReflectance,
        SnowCoverByMonth = scenario.Climate.SnowCoverByMonth,
        Known = scenario.Climate.Known,
        YearlyLowestSdK = scenario.Climate.LowestYearlySpreadK,
    };

    private static IEnumerable<(Winter Winter, double Weight)> Shared(IReadOnlyList<Winter> winters, double weight) => winters.Select(w => (w, weight / winters.Count));

    private static IReadOnlyList<Winter> Wished(WinterWish wish, Scenario scenario, IReadOnlyList<Winter> typical, WinterOptions options)
    {
        var climate = scenario.Climate;
        var hard = options with { HardReturnYears = wish.ReturnYears, HardLowestC = wish.LowestC, PowerCutHours = wish.PowerCutHours };
        return wish.Sort switch
        {
            WinterSort.Typical => typical,
            WinterSort.Drawn => Drawn(scenario, wish.Count, climate.Seed),
            _ => [climate.Monthly is { } means ? WinterMaker.Synthetic(means, scenario.Season, WinterKind.Hard, climate.Seed, hard) : WinterMaker.Harden(typical, hard)],
        };
    }
}
