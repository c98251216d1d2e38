using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Catalogues;
using DesignSearch.Parts.Piping;
using DesignSearch.Parts.Solar;
using DesignSearch.Season.Assumptions;
using DesignSearch.Season.Gathering;

namespace DesignSearch.Layouts.Systems.Solar;

/// <summary>A solar collector that warms a tank, and what gives the tank's heat to the house.</summary>
public sealed class SolarSystem : PlantSystem
{
    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } =
    [
        Collector.Definition, CollectorMount.Definition, Drive.Definition, Holdfast.Definition, Tank.Definition, TankJacket.Definition,
        Pipe.Definition, PipeInsulation.Definition, Pump.Definition, HeatRelease.Definition, FreezeProtection.Definition,
        SolarController.Definition,
        Antifreeze.Definition, ReliefValve.Definition, ExpansionVessel.Definition,
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => SolarChoices.All;

    /// <inheritdoc/>
    public override IReadOnlyList<CheckRule> Rules => SolarRules.All;

    /// <inheritdoc/>
    public override IReadOnlyList<AssumptionEntry> Assumptions => GatheringAssumptions.All;

    /// <inheritdoc/>
    public override bool NeedsLowVoltage(IChoices choices) => choices.Has(SolarChoices.Collector);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">A collector is chosen without a part that it cannot do without.</exception>
    public override DesignedSystem? Design(DesignTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        return task.Layout.Get(SolarChoices.Collector) is { } collector ? new DesignedSolar(SolarSizing.Of(task, collector)) : null;
    }
}
