using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Design.Checks;

/// <summary>What checks are asked under.</summary>
/// <param name="Scenario">Limits of site and money.</param>
/// <param name="LowestOutsideC">Lowest outdoor hour of the design winters [°C].</param>
/// <param name="PlantsStandApart">True where the plants that are held do not stand in the air of the house.</param>
/// <param name="Outcomes">Outcomes of the winters; empty before the simulation.</param>
public sealed record Conditions(Scenario Scenario, double LowestOutsideC, bool PlantsStandApart, IReadOnlyList<Outcome> Outcomes);
