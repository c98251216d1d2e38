using DesignSearch.Climate;
using DesignSearch.Files;
using DesignSearch.Season;

namespace DesignSearch.Layouts;

/// <summary>The winters of a scenario, made ready for the season model once and shared by all layouts.</summary>
public sealed class WinterSet
{
    private const long PlaneBytes = 400_000_000;

    private WinterSet(IReadOnlyList<(Winter Winter, double Weight, WinterForcing Forcing)> winters, PlaneCache planes) =>
        (Winters, Planes, LowestOutsideC) = (winters, planes, winters.Min(w => w.Winter.AirC.Min()));

    /// <summary>The winters with their weights, which add to 1.</summary>
    public IReadOnlyList<(Winter Winter, double Weight, WinterForcing Forcing)> Winters { get; }

    /// <summary>Plane irradiance by winter and mount.</summary>
    public PlaneCache Planes { get; }

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
            .Select(w => (w.Winter, w.Weight, WinterForcing.Prepare(w.Winter, HouseSun.TransmittedW(w.Winter, houseFacets, glazing, planes.Get), scenario.Assumptions)))
            .ToList();
        return new WinterSet(prepared, planes);
    }

    private static IEnumerable<(Winter Winter, double Weight)> Wanted(Scenario scenario, bool asRecorded)
    {
        var options = new WinterOptions();
        if (scenario.Climate.Monthly is { } monthly)
        {
            foreach (var wish in scenario.Winters)
                yield return (WinterMaker.Synthetic(monthly, scenario.Season, wish.Kind, scenario.Climate.Seed, options with { HardReturnYears = wish.ReturnYears }), wish.Weight);
            yield break;
        }

        var recorded = WinterMaker.FromRecord(scenario.Climate.Record!, scenario.Season, options);
        if (recorded.Count == 0)
            throw new InputException(new InputFault(scenario.Climate.Record!.Source, 0, 0, scenario.Climate.Record.Period, "weather that covers the whole season and its warm-up, or a whole year"));
        if (asRecorded)
        {
            foreach (var winter in recorded)
                yield return (winter, 1.0 / recorded.Count);
            yield break;
        }

        foreach (var wish in scenario.Winters)
        {
            if (wish.Kind == WinterKind.Hard)
            {
                yield return (WinterMaker.Harden(recorded[0], options with { HardReturnYears = wish.ReturnYears }), wish.Weight);
                continue;
            }

            foreach (var winter in recorded)
                yield return (winter, wish.Weight / recorded.Count);
        }
    }
}
