using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Design;

/// <summary>A supply of a layout, worked out.</summary>
/// <param name="plan">How current comes to the greenhouse, and to each device in it.</param>
public abstract class SuppliedSystem(SupplyPlan plan) : DesignedSystem
{
    /// <summary>How current comes to the greenhouse, and to each device in it.</summary>
    public SupplyPlan Plan => plan;
}
