using DesignSearch.Layouts.Design;
using DesignSearch.Layouts.Design.Brief;

namespace DesignSearch.Layouts.Systems.Shell;

/// <summary>The house itself where it is more than cover and floor: a wall it leans on, a base wall, a hoop, a floor below the ground outside. Nothing of it is bought.</summary>
public sealed class ShellSystem : PlantSystem
{
    /// <inheritdoc/>
    public override DesignedSystem? Design(DesignTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        var house = task.Scenario.Greenhouse;
        return house is { Shape: HouseShape.Gable, BaseWall.HeightM: <= 0 } ? null : new DesignedShell(house);
    }
}
