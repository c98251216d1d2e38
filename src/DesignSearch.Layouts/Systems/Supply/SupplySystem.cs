using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Layouts.Systems.Supply.OffGrid;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Electrics;
using DesignSearch.Parts.OffGrid;

namespace DesignSearch.Layouts.Systems.Supply;

/// <summary>Mains and extra-low voltage: what must be brought to the greenhouse for what is chosen.</summary>
public sealed class SupplySystem : PlantSystem, ISupplier
{
    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } =
    [
        Cable.Definition, PowerSupply.Definition, SunPanel.Definition, PanelBracket.Definition, ChargeController.Definition,
        Battery.Definition, BatteryFuse.Definition,
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => SupplyChoices.All;

    /// <inheritdoc/>
    public override IReadOnlyList<CheckRule> Rules => SupplyRules.All;

    /// <inheritdoc/>
    /// <remarks>Nothing by itself: it is asked by <see cref="Supply"/> once all devices are known.</remarks>
    public override DesignedSystem? Design(DesignTask task) => null;

    /// <inheritdoc/>
    public SuppliedSystem Supply(DesignTask task, IReadOnlyList<Circuit> circuits, Needs needs)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(circuits);
        ArgumentNullException.ThrowIfNull(needs);
        var scenario = task.Scenario;
        List<Circuit> all = [.. circuits];
        Controls.Add(needs.Parts, all);
        if (scenario.Site.HasNoMains)
            return new SuppliedPlant(OffGrid(task, all, needs), true);
        if (scenario.Site.MainsAtGreenhouse || NeedsMains(all))
            return new SuppliedPlant(Plan(task, true, all, needs));
        // Low voltage alone is brought from the dwelling, or made beside the greenhouse from mains brought there: whichever costs less.
        var (far, near) = (needs.Copy(), needs.Copy());
        var (farPlan, nearPlan) = (Plan(task, false, all, far), Plan(task, true, all, near));
        var takesFar = (far.Missing.Count, far.Price(scenario.Stock)).CompareTo((near.Missing.Count, near.Price(scenario.Stock))) <= 0;
        needs.TakeOver(takesFar ? far : near);
        return new SuppliedPlant(takesFar ? farPlan : nearPlan);
    }

    private static bool NeedsMains(List<Circuit> circuits)
    {
        for (var i = 0; i < circuits.Count; i++)
        {
            if (circuits[i].Volts >= SupplyPlan.MainsVolts)
                return true;
        }

        return false;
    }

    private static SupplyPlan OffGrid(DesignTask task, List<Circuit> circuits, Needs needs)
    {
        var layout = task.Layout;
        var key = new SupplyKey(
            true,
            false,
            0,
            0,
            layout.Get(SupplyChoices.SupplyW),
            layout.Get(SupplyChoices.CableMm2),
            layout.Get(SupplyChoices.ControlBox),
            circuits)
        {
            OffGrid = OffGridSite.Of(task.Scenario),
        };
        var planned = SupplyShelf.Of(task.Shelf).Plan(key, k => OffGridSizing.Plan(k, needs.Fresh()));
        needs.AddAll(planned.Needs);
        return planned.Plan;
    }

    private static SupplyPlan Plan(DesignTask task, bool mainsInHouse, List<Circuit> circuits, Needs needs)
    {
        var (site, layout) = (task.Scenario.Site, task.Layout);
        var key = new SupplyKey(
            mainsInHouse,
            site.MainsAtGreenhouse,
            site.MainsCableM,
            site.MainsLoopOhm,
            layout.Get(SupplyChoices.SupplyW),
            layout.Get(SupplyChoices.CableMm2),
            layout.Get(SupplyChoices.ControlBox),
            circuits);
        var planned = SupplyShelf.Of(task.Shelf).Plan(key, k => SupplySizing.Plan(k, needs.Fresh()));
        needs.AddAll(planned.Needs);
        needs.Licensed(LicensedWork.Hours(planned.Plan, site.MainsAtGreenhouse), LicensedWork.PurposeOf(planned.Plan));
        return planned.Plan;
    }
}
