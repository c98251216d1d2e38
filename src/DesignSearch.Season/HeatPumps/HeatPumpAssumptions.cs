using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.HeatPumps;

/// <summary>What an honest modeller could choose otherwise about a heat pump.</summary>
public static class HeatPumpAssumptions
{
    /// <summary>Share of heat lost to defrosting between −7 and +3 °C where the sheet has no +2 °C point.</summary>
    public static AssumptionEntry FrostShare { get; } = new(
        "heat_pump_frost_share",
        "share of the heat between −7 and +3 °C",
        0.08,
        0,
        0.25,
        "between 5 and 10 %: a moist night cost 6 % against a dry one in a heated greenhouse (Goto et al., Acta Hort. 1107), 6.2 % in 77 "
            + "dwellings (Vermont); only where the sheet has no +2 °C point");

    /// <summary>Efficiency gained for each kelvin of indoor air below the 20 °C of the sheet.</summary>
    public static AssumptionEntry CopPerK { get; } = new(
        "heat_pump_cop_per_k",
        "share for each kelvin of indoor air below 20 °C",
        0.01,
        0,
        0.025,
        "estimate, no source: half of what an ideal cycle of the same two coils would gain");

    /// <summary>Kelvin below 20 °C up to which the gain goes on.</summary>
    public static AssumptionEntry CopMostK { get; } = new(
        "heat_pump_cop_most_k",
        "K below 20 °C indoors",
        10,
        0,
        20,
        "estimate, no source: below it the machine holds its pressure by itself, and the gain ends");

    /// <summary>All of them, in the order of the report.</summary>
    public static IReadOnlyList<AssumptionEntry> All { get; } = [FrostShare, CopPerK, CopMostK];
}
