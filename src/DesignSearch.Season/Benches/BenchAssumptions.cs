using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.Benches;

/// <summary>What an honest modeller could choose otherwise about a bench under fleece.</summary>
public static class BenchAssumptions
{
    /// <summary>Heat capacity under the fleece of a bench, pots and trays included, per area of the bench [J/(m²K)].</summary>
    public static AssumptionEntry CapacityJPerM2K { get; } = new(
        "bench_capacity_j_per_m2k",
        "J/(m²K) of bench",
        125000,
        5000,
        400000,
        "own choice: 5 cm of moist pots and trays on average, 2.5e6 J/(m³K)");

    /// <summary>Share of the heat through a bench's fleece that radiates to the cover.</summary>
    public static AssumptionEntry RadiantShare { get; } = new(
        "bench_radiant_share",
        "share of what the fleece lets out",
        0.5,
        0,
        1,
        "own choice: inner films of EN 673 are about half radiation; it goes to the cover, the rest to the air");

    /// <summary>Heat that an open bench exchanges, per area [W/(m²K)].</summary>
    public static AssumptionEntry OpenWPerM2K { get; } = new(
        "bench_open_w_per_m2k",
        "W/(m²K) of bench",
        13,
        4,
        30,
        "own choice: still air and long-wave at both faces, twice 2.5 and 4.1 (EN ISO 6946, EN 673); by day, when it is warm enough, the fleece is open");

    /// <summary>Air in the house above which someone opens the fleece while the sun is up [°C].</summary>
    public static AssumptionEntry OpenAboveC { get; } = new(
        "bench_open_above_c",
        "°C",
        6,
        -10,
        100,
        "own choice: on a day that stays cold the fleece stays closed");

    /// <summary>All of them, in the order of the report.</summary>
    public static IReadOnlyList<AssumptionEntry> All { get; } =
    [
        CapacityJPerM2K, RadiantShare, OpenWPerM2K, OpenAboveC,
    ];
}
