using DesignSearch.Layouts.Design.Brief;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Season;
using DesignSearch.Season.Barrels;
using DesignSearch.Season.Heaters;
using DesignSearch.Season.Solar;

namespace DesignSearch.Layouts.Design;

/// <summary>Works a layout out: choices become physical numbers and a list of what is needed.</summary>
public static class LayoutBuilder
{
    /// <summary>Works one layout out.</summary>
    /// <param name="scenario">Place, house, catalogue and systems.</param>
    /// <param name="layout">The choices.</param>
    public static BuiltLayout Build(Scenario scenario, Layout layout) => Build(Begin(scenario, layout));

    /// <summary>The first half of the work: what most checks need, before anything is listed.</summary>
    /// <param name="scenario">Place, house, catalogue and systems.</param>
    /// <param name="layout">The choices.</param>
    public static BegunLayout Begin(Scenario scenario, Layout layout)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var task = new DesignTask(scenario, layout, PartShelf.Of(scenario.Offered, scenario.Money.Prices));
        var designed = new List<DesignedSystem>(scenario.Systems.All.Count);
        foreach (var system in scenario.Systems.All)
        {
            if (system.Design(task) is { } design)
                designed.Add(design);
        }

        return new(task, designed);
    }

    /// <summary>The second half: everything listed, and the current brought to it.</summary>
    /// <param name="begun">The first half.</param>
    public static BuiltLayout Build(BegunLayout begun)
    {
        ArgumentNullException.ThrowIfNull(begun);
        var (scenario, needs, systems) = (begun.Task.Scenario, NoNeeds(begun.Task.Scenario), begun.Systems);
        var circuits = new List<Circuit>();
        var plant = new Installation(
            BareHouse.Numbers(scenario.Greenhouse), BarrelNumbers.None, TankNumbers.None, CollectorNumbers.None, PipeRunNumbers.None, ReleaseNumbers.None, HeaterNumbers.None);
        foreach (var system in systems)
        {
            system.List(needs);
            circuits.AddRange(system.Circuits);
            plant = system.Install(plant);
        }

        plant = scenario.Greenhouse.Fit?.On(plant) ?? plant;
        SupplyPlan? supply = null;
        if (circuits.Count > 0 && scenario.Systems.Supplier?.Supply(begun.Task, circuits, needs) is { } supplied)
        {
            supply = supplied.Plan;
            systems = [.. systems, supplied];
        }

        return new BuiltLayout
        {
            Layout = begun.Layout,
            Systems = systems,
            Installation = plant,
            Supply = supply,
            Fit = scenario.Greenhouse.Fit,
            Parts = needs.Parts,
            Missing = needs.Missing,
        };
    }

    private static Needs NoNeeds(Scenario scenario) =>
        new(scenario.Offered, scenario.Money.Prices) { LicensedRate = scenario.Money.LicensedRatePerHour };
}
