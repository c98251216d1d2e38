using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>A supply plan with what it needs.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Needs">What it needs, which nobody adds to any more.</param>
internal sealed record PlannedSupply(SupplyPlan Plan, Needs Needs);
