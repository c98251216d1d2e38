using DesignSearch.Layouts.Design.Wiring;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>What several mains devices draw together.</summary>
/// <param name="Watts">Power while all run [W].</param>
/// <param name="StartA">Current while all run and the hungriest starts [A].</param>
internal readonly record struct Load(double Watts, double StartA)
{
    /// <summary>Current while all run [A].</summary>
    public double RunningA => Watts / SupplyPlan.MainsVolts;

    /// <summary>The load of devices.</summary>
    /// <param name="circuits">The devices.</param>
    public static Load Of(IReadOnlyList<Circuit> circuits)
    {
        var (watts, more) = (0.0, 0.0);
        for (var i = 0; i < circuits.Count; i++)
            (watts, more) = (watts + circuits[i].Watts, Math.Max(more, circuits[i].StartA - circuits[i].RunningA));
        return new(watts, (watts / SupplyPlan.MainsVolts) + more);
    }
}
