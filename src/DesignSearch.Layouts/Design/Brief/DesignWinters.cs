using DesignSearch.Climate.Winters;
using DesignSearch.Files;
using DesignSearch.Season.House;

namespace DesignSearch.Layouts.Design.Brief;

/// <summary>Makes the winters that a scenario asks for from its climate.</summary>
internal static class DesignWinters
{
    /// <summary>The winters on which layouts are judged, with their weights, which add to 1.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="asRecorded">True to take only what the weather file holds, no hard winter made from it.</param>
    /// <exception cref="InputException">The weather file holds no whole season.</exception>
    public static IEnumerable<(Winter Winter, double Weight)> Of(Scenario scenario, bool asRecorded = false)
    {
        var (climate, options) = (scenario.Climate, Options(scenario));
        var typical = climate.Monthly is { } monthly
            ? [WinterMaker.Synthetic(monthly, scenario.Season, WinterKind.Typical, climate.Seed, options)]
            : WinterMaker.FromRecord(climate.Record!, scenario.Season, options);
        if (typical.Count == 0)
            throw new InputException(new InputFault(climate.Record!.Source, 0, 0, climate.Record.Period, WinterWords.WholeSeason));
        return (asRecorded ? Shared(typical, 1) : scenario.Winters.SelectMany(wish => Shared(Wished(wish, scenario, typical, options), wish.Weight)))
            .Select(w => (Under(scenario, w.Winter), w.Weight));
    }

    /// <summary>Snow that would come to lie in a winter if nobody brushed it off, whatever the scenario says of it.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="winter">One of its winters.</param>
    public static LyingSnow SnowLeft(Scenario scenario, Winter winter) => LyingSnow.On(winter, isBrushed: false, scenario.Assumptions[HouseAssumptions.SnowBelowC]);

    /// <summary>Winters drawn by chance from the scenario's weather, each with a lowest night of its own.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="count">How many.</param>
    /// <param name="seed">Any number.</param>
    public static IReadOnlyList<Winter> Drawn(Scenario scenario, int count, ulong seed) => [.. Bare(scenario, count, seed).Select(w => Under(scenario, w))];

    /// <summary>The whole winters of a scenario's record, without snow; none where its weather is made from means.</summary>
    /// <param name="scenario">The scenario.</param>
    public static IReadOnlyList<Winter> Recorded(Scenario scenario) =>
        scenario.Climate.Record is { } record ? WinterMaker.FromRecord(record, scenario.Season, Options(scenario)) : [];

    private static IReadOnlyList<Winter> Bare(Scenario scenario, int count, ulong seed) => scenario.Climate.Monthly is { } monthly
        ? WinterMaker.Drawn(monthly, scenario.Season, count, seed, Options(scenario))
        : WinterMaker.Drawn(WinterMaker.FromRecord(scenario.Climate.Record!, scenario.Season, Options(scenario)), count, seed, Options(scenario));

    private static Winter Under(Scenario scenario, Winter winter) => scenario.Site.Snow is SnowCare.Brushed or SnowCare.Left
        ? winter with { Snow = SnowLeft(scenario, winter) with { IsBrushed = scenario.Site.Snow == SnowCare.Brushed } }
        : winter;

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
            WinterSort.Drawn => Bare(scenario, wish.Count, climate.Seed),
            _ => [climate.Monthly is { } means ? WinterMaker.Synthetic(means, scenario.Season, WinterKind.Hard, climate.Seed, hard) : WinterMaker.Harden(typical, hard)],
        };
    }
}
