using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.Compost;

/// <summary>What an honest modeller could choose otherwise about a compost heap.</summary>
public static class CompostAssumptions
{
    /// <summary>Core of a compost heap when the warm-up begins [°C].</summary>
    public static AssumptionEntry StartC { get; } = new(
        "compost_start_c",
        "°C",
        45,
        5,
        70,
        "40 to 50 °C within two or three days of building: Cornell Composting, compost physics; the heap is built as the warm-up begins");

    /// <summary>Most that heat speeds rotting up, over the rate at 20 °C.</summary>
    public static AssumptionEntry RateFactorMost { get; } = new(
        "compost_rate_factor_most",
        "rate over that at 20 °C",
        5,
        1,
        18,
        "own choice: Haug's factor is capped, or a woody heap burns out in weeks");

    /// <summary>Core above which steam leaves the heap [°C].</summary>
    public static AssumptionEntry SteamFromC { get; } = new(
        "compost_steam_from_c",
        "°C",
        55,
        40,
        75,
        "own choice: above it steam and rising air cool the core");

    /// <summary>Heat that steam takes, per volume and kelvin above that [W/(m³K)].</summary>
    public static AssumptionEntry SteamWPerM3K { get; } = new(
        "compost_steam_w_per_m3k",
        "W/(m³K)",
        30,
        0,
        200,
        "own choice: holds a fresh heap below some 70 °C");

    /// <summary>Heat capacity of moist compost [J/(m³K)].</summary>
    public static AssumptionEntry VolumetricCapacityJPerM3K { get; } = new(
        "compost_volumetric_capacity_j_per_m3k",
        "J/(m³K)",
        2.5e6,
        0.26e6,
        4.1e6,
        "within 1.4e6 to 4.1e6 of moist sawdust, manure and soil: Ahn et al. 2009, abstract");

    /// <summary>Conductivity of moist compost [W/(m·K)].</summary>
    public static AssumptionEntry ConductivityWPerMK { get; } = new(
        "compost_conductivity_w_per_mk",
        "W/(m·K)",
        0.3,
        0.03,
        0.9,
        "between wet straw and moist manure: Ahn et al. 2009, abstract");

    /// <summary>Outer layer that insulates the core [m].</summary>
    public static AssumptionEntry ShellM { get; } = new(
        "compost_shell_m",
        "m",
        0.3,
        0.05,
        1,
        "own choice: outer layer of the heap that insulates its core");

    /// <summary>Kelvins over which the pump comes in above the core at which it rests.</summary>
    public static AssumptionEntry PumpFadeK { get; } = new(
        "compost_pump_fade_k", "K of the core", 5, 0.5, 20, "own choice: the band of the thermostat in the core, evened out");

    /// <summary>Core over the set point of the house below which the coil gives nothing.</summary>
    public static AssumptionEntry PumpAboveSetK { get; } = new(
        "compost_pump_above_set_k", "K between core and set point", 1, 0, 10, "own choice: water that is hardly warmer brings nothing");

    /// <summary>All of them, in the order of the report.</summary>
    public static IReadOnlyList<AssumptionEntry> All { get; } =
    [
        StartC, RateFactorMost, SteamFromC, SteamWPerM3K, VolumetricCapacityJPerM3K, ConductivityWPerMK, ShellM,
        PumpFadeK, PumpAboveSetK,
    ];
}
