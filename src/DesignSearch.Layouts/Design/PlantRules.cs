using DesignSearch.Layouts.Design.Checks;
using DesignSearch.Layouts.Design.Duties;

namespace DesignSearch.Layouts.Design;

/// <summary>Rules of the whole plant, whatever systems it has.</summary>
public static class PlantRules
{
    /// <summary>What it costs to build.</summary>
    public static CheckRule Budget { get; } = new("budget", "build price", "The builder's own limit");

    /// <summary>Hours of own work.</summary>
    public static CheckRule BuildHours { get; } = new("build-hours", "hours of own work", "The builder's own limit");

    /// <summary>Whether the catalogue has all that is needed.</summary>
    public static CheckRule Parts { get; } = new("parts", "parts in the catalogue", "The catalogue");

    /// <summary>Floor that stores take.</summary>
    public static CheckRule StoreFloor { get; } = new("store-floor", "floor for tank and barrels", "The site's own limit");

    /// <summary>Weight of full stores.</summary>
    public static CheckRule FloorLoad { get; } = new(
        "floor-load",
        "weight on the floor",
        "A litre of water weighs a kilogram; what the floor bears is the builder's figure, 1500 kg/m² where none is given (own choice)");

    /// <summary>What happens in a power cut.</summary>
    public static CheckRule PowerCut { get; } = new(
        "power-cut",
        "a power cut on the coldest night",
        "The season model; told, not refused: frost in the cut counts as frost");

    /// <summary>Thermostats that heat against the vents.</summary>
    public static CheckRule Vents { get; } = new(
        "vents-apart", "heating clear of the vents", "3 K between heating and venting: common practice, no source");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CheckRule> All { get; } =
        [Budget, BuildHours, Parts, StoreFloor, FloorLoad, PowerCut, Vents, .. DutyRules.All];
}
