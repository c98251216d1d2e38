using DesignSearch.Layouts.Design;

namespace DesignSearch.Layouts.Decide.Weigh;

/// <summary>One stage of building a layout; what stands after it is a layout that works by itself.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Adds">What is added, in plain words.</param>
/// <param name="Price">What is bought in it.</param>
/// <param name="PriceSoFar">Everything bought so far; after the last stage the layout's build price.</param>
/// <param name="FrostDegreeHoursKh">Frost degree-hours that are left, weighted over the winters [K·h].</param>
/// <param name="WorstFrostHours">Frost hours of the worst winter that are left.</param>
/// <param name="LowestAirC">Lowest hour mean of the plants' air over the winters [°C].</param>
/// <param name="StandbyKwh">Electric heat, weighted over the winters [kWh].</param>
/// <param name="Plants">Where the plants that are held stand; null for the whole house.</param>
/// <param name="TakeCare">What the cold of this stage makes true and of none before, in sentences; empty for nothing.</param>
public sealed record Stage(
    int Number,
    string Adds,
    decimal Price,
    decimal PriceSoFar,
    double FrostDegreeHoursKh,
    int WorstFrostHours,
    double LowestAirC,
    double StandbyKwh,
    PlantPlace? Plants,
    string TakeCare);
