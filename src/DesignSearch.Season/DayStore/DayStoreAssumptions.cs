using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.DayStore;

/// <summary>What an honest modeller could choose otherwise about a day-heat store.</summary>
public static class DayStoreAssumptions
{
    /// <summary>Heat that condenses in the pipes while they are charged, over the sensible charge.</summary>
    public static AssumptionEntry LatentShare { get; } = new(
        "day_store_latent_share",
        "heat of condensation over the sensible charge",
        0.1,
        0,
        0.4,
        "own choice within 0 to 0.3; condensation seen in the first hours of charging (Hollmuller and Lachal 2001), 0.4 on cold fins "
            + "under a roof (Schmidt et al. 2012)");

    /// <summary>Share of that water which stays on the wall and takes its heat back at night; the rest drains off.</summary>
    public static AssumptionEntry WaterKept { get; } = new(
        "day_store_water_kept",
        "share of the condensed water that does not drain",
        0.5,
        0,
        1,
        "own choice: smooth pipes with a fall keep a film, corrugated ones keep puddles");

    /// <summary>Heat that the house evaporates, over the sun that stays as sensible heat: more cannot condense.</summary>
    public static AssumptionEntry VapourOfSun { get; } = new(
        "day_store_vapour_of_sun",
        "heat of evaporation over the sensible sun",
        0.2,
        0,
        1,
        "own choice: half of what sun_sensible_share leaves evaporates water");

    /// <summary>Difference between air and soil at which the fan starts, after the set point is reached.</summary>
    public static AssumptionEntry StartK { get; } = new(
        "day_store_start_k",
        "K between air and soil round the pipes",
        3,
        0.5,
        10,
        "common practice, no source: below it the fan takes more than it brings");

    /// <summary>All of them, in the order of the report.</summary>
    public static IReadOnlyList<AssumptionEntry> All { get; } = [LatentShare, WaterKept, VapourOfSun, StartK];
}
