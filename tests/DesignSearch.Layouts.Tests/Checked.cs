using DesignSearch.Layouts.Assess;
using DesignSearch.Layouts.Assess.Checks;
using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Systems.Solar;
using DesignSearch.Season;

namespace DesignSearch.Layouts.Tests;

/// <summary>The checks of a layout at a price that the test names.</summary>
internal static class Checked
{
    public static IReadOnlyList<Check> Of(Scenario scenario, BuiltLayout built, decimal price, double hours, double lowestOutsideC, IReadOnlyList<Outcome> outcomes) =>
        CheckList.Of(new Conditions(scenario, lowestOutsideC, built.Plants is not null, outcomes), new PricedLayout(built, price, 0, hours));

    /// <summary>The same layout with something of its collector loop changed.</summary>
    public static BuiltLayout WithLoop(BuiltLayout built, Func<SolarLoop, SolarLoop> change) =>
        built with { Systems = [.. built.Systems.Select(s => s is DesignedSolar solar ? new DesignedSolar(change(solar.Loop)) : s)] };
}
