using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Choices;
using DesignSearch.Parts.Barrels;
using DesignSearch.Parts.Catalogues;

namespace DesignSearch.Layouts.Systems.Barrels;

/// <summary>Water barrels in the house.</summary>
public sealed class BarrelSystem : PlantSystem
{
    /// <inheritdoc/>
    public override IReadOnlyList<PartKind> Kinds { get; } = [Barrel.Definition];

    /// <inheritdoc/>
    public override IReadOnlyList<Choice> Choices => BarrelChoices.All;

    /// <inheritdoc/>
    public override DesignedSystem? Design(DesignTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        return task.Layout.Get(BarrelChoices.Barrel) is { } barrel
            ? new DesignedBarrels(barrel, task.Layout.Get(BarrelChoices.Count), task.Scenario.Greenhouse.FloorM2)
            : null;
    }
}
