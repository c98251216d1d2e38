using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Layouts.Design.Wiring;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.DayStore;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.DayStore;

namespace DesignSearch.Layouts.Systems.DayStore;

/// <summary>A day-heat store: pipes under the floor, a header at each end and a fan.</summary>
public sealed class DayStoreSystem : PlantSystem
{
    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } = [EarthPipe.Definition, EarthHeader.Definition, StoreFan.Definition];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => DayStoreChoices.All;

    /// <inheritdoc/>
    public override IReadOnlyList<AssumptionEntry> Assumptions => DayStoreAssumptions.All;

    /// <inheritdoc/>
    public override IReadOnlyList<CheckRule> Rules => DayStoreRules.All;

    /// <inheritdoc/>
    public override bool NeedsLowVoltage(IChoices choices) =>
        choices.Has(DayStoreChoices.Pipe) && choices.Get(DayStoreChoices.Fan) is { Volts: < SupplyPlan.MainsVolts };

    /// <inheritdoc/>
    public override DesignedSystem? Design(DesignTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        var layout = task.Layout;
        if (layout.Get(DayStoreChoices.Pipe) is not { } pipe || layout.Get(DayStoreChoices.Fan) is not { } fan)
            return null;
        var house = task.Scenario.Greenhouse;
        var field = PipeField.Of(house.LengthM, house.WidthM, layout.Get(DayStoreChoices.PipeMPerM2), pipe.OuterMm);
        var sizing = task.Shelf.Once(_ => new DayStoreSizing());
        var (flow, numbers) = sizing.Of(pipe, fan, field, layout.Get(DayStoreChoices.DepthM), task.Scenario.Assumptions);
        var set = numbers with { ChargeAboveC = layout.Get(DayStoreChoices.ChargeC), SetPointC = layout.Get(DayStoreChoices.SetC) };
        return new DesignedDayStore(pipe, fan, field, layout.Get(DayStoreChoices.DepthM), flow, set);
    }
}
