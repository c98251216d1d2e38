using DesignSearch.Season.Assumptions;

namespace DesignSearch.Season.Gathering;

/// <summary>What an honest modeller could choose otherwise about day heat that a fan coil gathers into the tank.</summary>
public static class GatheringAssumptions
{
    /// <summary>Difference between air and the tank's top at which pump and fan may start.</summary>
    public static AssumptionEntry StartK { get; } = new(
        "gathering_start_k",
        "K between air and the tank's top",
        3,
        1,
        10,
        "common practice, no source: below it pump and fan take more than they bring");

    /// <summary>All of them, in the order of the report.</summary>
    public static IReadOnlyList<AssumptionEntry> All { get; } = [StartK];
}
